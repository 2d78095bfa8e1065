#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <stdexcept>

namespace brimwright::geometry {
namespace {

Point difference(const Point& a, const Point& b) { return {a[0] - b[0], a[1] - b[1], a[2] - b[2]}; }

/// Six times the signed volume of the tetrahedron from the origin to a, b, c.
double triple_product(const Point& a, const Point& b, const Point& c) {
  return a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) +
         a[2] * (b[0] * c[1] - b[1] * c[0]);
}

}  // namespace

Volume enclosed_volume(const TriangleMesh& solid) {
  if (solid.vertices_mm.empty()) return Volume();
  // A far origin would make each term huge and the sum a small difference of them.
  const Point origin = solid.vertices_mm.front();
  double six_volumes = 0;
  for (const auto& [a, b, c] : solid.triangles) {
    six_volumes += triple_product(difference(solid.vertices_mm[a], origin),
                                  difference(solid.vertices_mm[b], origin),
                                  difference(solid.vertices_mm[c], origin));
  }
  return six_volumes / 6 * cubic_millimetre;
}

std::optional<Box> box_if_any(const TriangleMesh& mesh) {
  if (mesh.vertices_mm.empty()) return std::nullopt;
  Box box{mesh.vertices_mm.front(), mesh.vertices_mm.front()};
  for (const Point& p : mesh.vertices_mm) {
    for (std::size_t axis = 0; axis < 3; ++axis) {
      box.low_mm[axis] = std::min(box.low_mm[axis], p[axis]);
      box.high_mm[axis] = std::max(box.high_mm[axis], p[axis]);
    }
  }
  return box;
}

Box bounding_box(const TriangleMesh& mesh) {
  const std::optional<Box> box = box_if_any(mesh);
  if (!box) throw std::logic_error("an empty mesh has no box");
  return *box;
}

}  // namespace brimwright::geometry
