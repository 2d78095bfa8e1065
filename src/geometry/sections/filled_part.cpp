#include "geometry/sections/filled_part.h"

#include "geometry/sections/outline_filling.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"

#include <utility>

namespace brimwright::geometry {
namespace {

Plane level_at(const TriangleMesh& cavity, Length depth) {
  return Plane::level(bounding_box(cavity).low_mm[2] + depth / millimetre);
}

}  // namespace

TriangleMesh part_below(const TriangleMesh& solid, const Plane& plane) {
  PlaneCut cut = plane_cut(solid, plane);
  const auto caps = outline_filling(cut, plane);
  TriangleMesh part{.vertices_mm = std::move(cut.vertices_mm), .triangles = std::move(cut.below)};
  part.triangles.insert(part.triangles.end(), caps.begin(), caps.end());
  drop_unused_vertices(part);
  return part;
}

TriangleMesh part_above(const TriangleMesh& solid, const Plane& plane) {
  return part_below(solid, plane.flipped());
}

TriangleMesh filled_part(const TriangleMesh& cavity, Length depth) {
  if (cavity.vertices_mm.empty()) return {};
  return part_below(cavity, level_at(cavity, depth));
}

TriangleMesh layer_between(const TriangleMesh& cavity, Length from, Length to) {
  if (cavity.vertices_mm.empty()) return {};
  TriangleMesh below = part_below(cavity, level_at(cavity, to));
  return from > Length{} ? part_above(below, level_at(cavity, from)) : below;
}

}  // namespace brimwright::geometry
