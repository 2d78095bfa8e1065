#include "moulds/mesh_standing.h"

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace brimwright::moulds {

using namespace geometry;  // of meshes from end to end

namespace {

constexpr std::array every_axis = {Axis::plus_x,  Axis::minus_x, Axis::plus_y,
                                   Axis::minus_y, Axis::plus_z,  Axis::minus_z};

Point along(Axis axis) {
  const auto number = static_cast<std::size_t>(axis);
  Point p{};
  p[number / 2] = number % 2 == 0 ? 1 : -1;
  return p;
}

/// Where the file's axis `named` points in a mesh that stands with the file's `up` as +z.
Axis as_it_stands(Axis named, Axis up) {
  const Point p = upright(along(named), up);
  for (const Axis axis : every_axis)
    if (along(axis) == p) return axis;
  return named;
}

double share_in_pockets(Volume held, Volume solid) {
  const Volume all = held + solid;
  return all > Volume() ? held / all : 0;
}

/// Twice a facet's area, as a vector.
Point facet_normal(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& facet) {
  return doubled_area(mesh.vertices_mm[facet[0]], mesh.vertices_mm[facet[1]],
                      mesh.vertices_mm[facet[2]]);
}

/// Facets that look nearly up or down, gathered by direction; a key is a direction to a tenth of a
/// degree, up and down being one.
struct FlatFace {
  Point normal{};
  double twice_area = 0;
};
using FlatFaces = std::map<std::array<long, 2>, FlatFace>;

FlatFaces nearly_level_faces(const TriangleMesh& mesh) {
  const double least_cosine = std::cos(10 * pi / 180);
  const double step = 0.1 * pi / 180;
  const auto parts =
      in_parts<FlatFaces>(mesh.triangles.size(), [&](std::size_t i, FlatFaces& faces) {
        Point n = facet_normal(mesh, mesh.triangles.data()[i]);
        const double size = length(n);
        if (size == 0 || std::abs(n[2]) < least_cosine * size) return;
        if (n[2] < 0) n = {-n[0], -n[1], -n[2]};
        FlatFace& face = faces[{std::lround(n[0] / size / step), std::lround(n[1] / size / step)}];
        face.normal = face.normal + n;
        face.twice_area += size;
      });
  FlatFaces faces;
  for (const FlatFaces& part : parts) {
    for (const auto& [direction, more] : part) {
      FlatFace& face = faces[direction];
      face.normal = face.normal + more.normal;
      face.twice_area += more.twice_area;
    }
  }
  return faces;
}

}  // namespace

double share_in_pockets(const PocketSurvey& survey) {
  Volume held;
  for (const Pocket& pocket : survey.pockets) held += pocket.brimful;
  return share_in_pockets(held, survey.solid);
}

std::vector<OtherWayUp> other_ways_up(const TriangleMesh& body, Axis up) {
  std::vector<OtherWayUp> ways;
  std::vector<Turn> turns;
  for (const Axis named : every_axis) {
    if (named == up) continue;
    ways.push_back({.up = named});
    turns.push_back([as = as_it_stands(named, up)](const Point& p) { return upright(p, as); });
  }
  const std::vector<HeldInShort> held = held_when_turned(body, turns);
  for (std::size_t i = 0; i < ways.size(); ++i) {
    ways[i].pockets = held[i].pockets;
    ways[i].largest = held[i].largest;
    ways[i].share = share_in_pockets(held[i].held, held[i].solid);
  }
  std::erase_if(ways, [](const OtherWayUp& way) { return way.pockets == 0; });
  std::stable_sort(ways.begin(), ways.end(),
                   [](const OtherWayUp& a, const OtherWayUp& b) { return a.share > b.share; });
  return ways;
}

std::optional<Lean> lean_of(const TriangleMesh& mesh) {
  const auto faces = nearly_level_faces(mesh);
  const auto largest = std::max_element(
      faces.begin(), faces.end(),
      [](const auto& a, const auto& b) { return a.second.twice_area < b.second.twice_area; });
  if (largest == faces.end()) return std::nullopt;
  const Box box = bounding_box(mesh);
  const double outline = (box.high_mm[0] - box.low_mm[0]) * (box.high_mm[1] - box.low_mm[1]);
  const FlatFace& face = largest->second;
  if (face.twice_area / 2 < 0.2 * outline) return std::nullopt;
  const double size = std::hypot(face.normal[0], face.normal[1], face.normal[2]);
  const Point up = {face.normal[0] / size, face.normal[1] / size, face.normal[2] / size};
  const double radians = std::atan2(std::hypot(up[0], up[1]), up[2]);
  if (radians < 0.2 * pi / 180) return std::nullopt;  // less than a millimetre over a long loaf
  return Lean{.angle = Angle::in_radians(radians), .up = up};
}

}  // namespace brimwright::moulds
