#include "geometry/surface/enclosed_volume.h"

#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cstddef>
#include <stdexcept>
#include <vector>

namespace brimwright::geometry {
namespace {

/// Six times the signed volume of the tetrahedron from the origin to a, b, c.
double triple_product(const Point& a, const Point& b, const Point& c) {
  return dot(a, cross(b, c));
}

/// Makes a box that reaches from `low` to `high` hold another.
void widen(Point& low, Point& high, const Point& other_low, const Point& other_high) {
  low = {std::min(low[0], other_low[0]), std::min(low[1], other_low[1]),
         std::min(low[2], other_low[2])};
  high = {std::max(high[0], other_high[0]), std::max(high[1], other_high[1]),
          std::max(high[2], other_high[2])};
}

}  // namespace

Volume enclosed_volume(const TriangleMesh& solid) {
  if (solid.vertices_mm.empty()) return Volume();
  // A far origin would make each term huge and the sum a small difference of them.
  const Point origin = solid.vertices_mm.front();
  const Point* const at = solid.vertices_mm.data();
  const auto parts = in_parts<double>(
      solid.triangles.size(), [&, triangles = solid.triangles.data()](std::size_t i, double& sum) {
        const auto& [a, b, c] = triangles[i];
        sum += triple_product(at[a] - origin, at[b] - origin, at[c] - origin);
      });
  double six_volumes = 0;
  for (const double part : parts) six_volumes += part;
  return six_volumes / 6 * cubic_millimetre;
}

std::optional<Box> box_if_any(const TriangleMesh& mesh) {
  if (mesh.vertices_mm.empty()) return std::nullopt;
  const Point* const at = mesh.vertices_mm.data();
  const std::size_t vertices = mesh.vertices_mm.size();
  constexpr std::size_t in_part = std::size_t{1} << 16;
  std::vector<Box> boxes((vertices + in_part - 1) / in_part);
  in_parallel(boxes.size(), [&](std::size_t part) {
    Point low = at[part * in_part], high = low;
    for (std::size_t v = part * in_part; v < std::min(vertices, (part + 1) * in_part); ++v)
      widen(low, high, at[v], at[v]);
    boxes[part] = {low, high};
  });
  Box box = boxes.front();
  for (const Box& part : boxes) widen(box.low_mm, box.high_mm, part.low_mm, part.high_mm);
  return box;
}

Box bounding_box(const TriangleMesh& mesh) {
  const std::optional<Box> box = box_if_any(mesh);
  if (!box) throw std::logic_error("an empty mesh has no box");
  return *box;
}

}  // namespace brimwright::geometry
