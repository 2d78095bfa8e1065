#include "geometry/pockets/pocket_minimum.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace brimwright::geometry {
namespace {

/// An edge that rises from a minimum, with one of the facets beside it.
struct Rise {
  double slope;
  double facing;  // z of the facet's normal of length 1
};

/// z of the normal of length 1; nothing for a facet without area.
std::optional<double> facing_of(const Point& a, const Point& b, const Point& c) {
  using Long = long double;  // a needle's normal is the small difference of large products
  const std::array<Long, 3> u = {Long{b[0]} - a[0], Long{b[1]} - a[1], Long{b[2]} - a[2]};
  const std::array<Long, 3> v = {Long{c[0]} - a[0], Long{c[1]} - a[1], Long{c[2]} - a[2]};
  const Long x = u[1] * v[2] - u[2] * v[1];
  const Long y = u[2] * v[0] - u[0] * v[2];
  const Long z = u[0] * v[1] - u[1] * v[0];
  const Long length = std::sqrt(x * x + y * y + z * z);
  if (!(length > 0)) return std::nullopt;
  return static_cast<double>(z / length);
}

}  // namespace

std::optional<bool> carries_air(const TriangleMesh& mesh, std::uint32_t vertex,
                                std::span<const std::uint32_t> facets_at_it) {
  const auto& vertices = mesh.vertices_mm;
  std::optional<Rise> flattest;
  for (const std::uint32_t facet : facets_at_it) {
    const auto& [a, b, c] = mesh.triangles[facet];
    const auto facing = facing_of(vertices[a], vertices[b], vertices[c]);
    if (!facing || *facing == 0) continue;
    for (const std::uint32_t other : {a, b, c}) {
      if (other == vertex) continue;
      const Point &from = vertices[vertex], &to = vertices[other];
      const double run = std::hypot(to[0] - from[0], to[1] - from[1]);
      const double rise = to[2] - from[2];
      const Rise edge{run > 0 ? rise / run : HUGE_VAL, *facing};
      if (!flattest || edge.slope < flattest->slope ||
          (edge.slope == flattest->slope && std::abs(edge.facing) > std::abs(flattest->facing))) {
        flattest = edge;
      }
    }
  }
  if (!flattest) return std::nullopt;
  return flattest->facing > 0;
}

bool is_floor(const AirSurface& surface, std::span<const std::uint32_t> plateau) {
  // A sheet without thickness that ends here hangs down: its edge holds nothing.
  for (const std::uint32_t v : plateau)
    if (surface.other_side(v) != AirSurface::none) return false;
  for (const std::uint32_t v : plateau)
    if (const auto answer = carries_air(surface.mesh(), v, surface.facets_at(v))) return *answer;
  return false;  // nothing but facets without area
}

}  // namespace brimwright::geometry
