#include "geometry/distance/placement.h"

#include "geometry/surface/enclosed_volume.h"

#include <cmath>
#include <cstddef>

namespace brimwright::geometry {
namespace {

using Turn = std::array<Point, 3>;

struct CosineAndSine {
  double cosine, sine;
};

/// Of whole quarter turns exactly 0 and 1, so that flat sides stay flat.
CosineAndSine cosine_and_sine(Angle angle) {
  const auto settled = [](double x) { return std::abs(x) < 1e-15 ? 0.0 : x; };
  return {settled(std::cos(angle.radians())), settled(std::sin(angle.radians()))};
}

Turn after(const Turn& later, const Turn& earlier) {
  Turn both{};
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j)
      for (std::size_t k = 0; k < 3; ++k) both[i][j] += later[i][k] * earlier[k][j];
  }
  return both;
}

}  // namespace

Turn turned_about_axes(Angle x, Angle y, Angle z) {
  const auto [cx, sx] = cosine_and_sine(x);
  const auto [cy, sy] = cosine_and_sine(y);
  const auto [cz, sz] = cosine_and_sine(z);
  const Turn about_x = {{{1, 0, 0}, {0, cx, -sx}, {0, sx, cx}}};
  const Turn about_y = {{{cy, 0, sy}, {0, 1, 0}, {-sy, 0, cy}}};
  const Turn about_z = {{{cz, -sz, 0}, {sz, cz, 0}, {0, 0, 1}}};
  return after(about_z, after(about_y, about_x));
}

Vector placed(const Vector& point, const Placement& placement) {
  const auto& [x, y, z] = placement.turn;
  return Vector{dot(x, point), dot(y, point), dot(z, point)} + placement.move_mm;
}

TriangleMesh placed(const TriangleMesh& mesh, const Placement& placement) {
  TriangleMesh elsewhere = mesh;
  for (Vector& vertex : elsewhere.vertices_mm) vertex = placed(vertex, placement);
  return elsewhere;
}

TriangleMesh centred_on_floor(const TriangleMesh& mesh) {
  const auto [low, high] = bounding_box(mesh);
  const Vector middle = (low + high) * 0.5;
  return placed(mesh, {.move_mm = {-middle[0], -middle[1], -low[2]}});
}

}  // namespace brimwright::geometry
