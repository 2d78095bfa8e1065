#include "geometry/distance/oriented_box.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace brimwright::geometry {
namespace {

Vector turned(const Vector& direction, const Placement& placement) {
  const auto& [x, y, z] = placement.turn;
  return {dot(x, direction), dot(y, direction), dot(z, direction)};
}

double squared_if_positive(double x) { return x > 0 ? x * x : 0; }

}  // namespace

OrientedBox placed(const OrientedBox& box, const Placement& placement) {
  return {placed(box.middle, placement),
          {turned(box.axes[0], placement), turned(box.axes[1], placement),
           turned(box.axes[2], placement)},
          box.half};
}

double least_distance_mm(const OrientedBox& a, const OrientedBox& b) {
  const Vector between = b.middle - a.middle;
  std::array<Vector, 3> cosine;  // of a's axes with b's, without sign
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) cosine[i][j] = std::abs(dot(a.axes[i], b.axes[j]));
  double along_a = 0, along_b = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    along_a +=
        squared_if_positive(std::abs(dot(between, a.axes[i])) - a.half[i] - dot(cosine[i], b.half));
    const Vector seen_from_b = {cosine[0][i], cosine[1][i], cosine[2][i]};
    along_b += squared_if_positive(std::abs(dot(between, b.axes[i])) - b.half[i] -
                                   dot(seen_from_b, a.half));
  }
  return std::sqrt(std::max(along_a, along_b));
}

double distance_mm(const Vector& point, const OrientedBox& box) {
  const Vector from = point - box.middle;
  double squared = 0;
  for (std::size_t i = 0; i < 3; ++i)
    squared += squared_if_positive(std::abs(dot(from, box.axes[i])) - box.half[i]);
  return std::sqrt(squared);
}

}  // namespace brimwright::geometry
