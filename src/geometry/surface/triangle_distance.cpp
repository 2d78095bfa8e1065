#include "geometry/surface/triangle_distance.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace brimwright::geometry {
namespace {

bool lower_to_pair(const Vector& on_first, const Vector& on_second, NearestPair& nearest) {
  const double distance = length(on_second - on_first);
  if (!(distance < nearest.distance_mm)) return false;
  nearest = {distance, on_first, on_second};
  return true;
}

struct Span {
  double low, high;
};

Span span_along(const Vector& direction, const Facet& facet, const Vector& from) {
  const double a = dot(direction, facet.corner[0] - from);
  const double b = dot(direction, facet.corner[1] - from);
  const double c = dot(direction, facet.corner[2] - from);
  return {std::min({a, b, c}), std::max({a, b, c})};
}

/// Whether `direction` alone shows that the two are at least so far apart. Both are measured, as
/// the normal of a needle may be far from upright on it.
bool is_apart_along(const Vector& direction, const Facet& first, const Facet& second,
                    double distance_mm) {
  const Vector& from = first.corner[0];
  const Span a = span_along(direction, first, from), b = span_along(direction, second, from);
  const double between = std::max(a.low - b.high, b.low - a.high);
  return between > 0 && between >= distance_mm * length(direction);
}

bool is_flat(const Facet& facet) { return dot(facet.normal, facet.normal) == 0; }

bool lies_over(const Vector& point, const Facet& facet) {
  for (std::size_t i = 0; i < 3; ++i)
    if (dot(facet.outward[i], point - facet.corner[i]) > 0) return false;
  return !is_flat(facet);
}

Vector nearest_on_edge(const Vector& point, const Facet& facet, std::size_t edge) {
  const Vector& along = facet.along[edge];
  const double whole = dot(along, along);
  const Vector& from = facet.corner[edge];
  return whole > 0 ? from + along * std::clamp(dot(point - from, along) / whole, 0.0, 1.0) : from;
}

/// Where an edge of `through` goes through `facet`.
bool is_pierced(const Facet& facet, const Facet& through, Vector& at) {
  if (is_flat(facet)) return false;
  Point height{};
  for (std::size_t i = 0; i < 3; ++i)
    height[i] = dot(facet.normal, through.corner[i] - facet.corner[0]);
  for (std::size_t i = 0; i < 3; ++i) {
    const double from = height[i], to = height[(i + 1) % 3];
    if ((from > 0) == (to > 0)) continue;
    at = through.corner[i] + through.along[i] * (from / (from - to));
    if (lies_over(at, facet)) return true;
  }
  return false;
}

/// Between two edges where the nearest points lie within both; their ends are told by the faces.
///
/// The share of the way along each is had from their cross product, not from their dot products,
/// as edges that are nearly parallel would lose half of the digits.
bool lower_to_edges(const Facet& first, std::size_t i, const Facet& second, std::size_t j,
                    NearestPair& nearest) {
  const Vector &along = first.along[i], &other = second.along[j];
  const Vector across = cross(along, other);
  const double whole = dot(across, across);
  const Vector from = second.corner[j] - first.corner[i];
  const double apart = dot(from, across);
  if (whole == 0 || apart * apart >= whole * nearest.distance_mm * nearest.distance_mm)
    return false;
  const double share = dot(cross(from, other), across);
  const double other_share = dot(cross(from, along), across);
  if (share < 0 || share > whole || other_share < 0 || other_share > whole) return false;
  return lower_to_pair(first.corner[i] + along * (share / whole),
                       second.corner[j] + other * (other_share / whole), nearest);
}

NearestPair swapped(const NearestPair& pair) {
  return {pair.distance_mm, pair.on_second, pair.on_first};
}

bool lower_to_corners(const Facet& first, const Facet& second, NearestPair& nearest) {
  bool lowered = false;
  for (const Vector& corner : first.corner)
    lowered = lower_to_distance(corner, second, nearest) || lowered;
  NearestPair other_way = swapped(nearest);
  bool lowered_by_other = false;
  for (const Vector& corner : second.corner)
    lowered_by_other = lower_to_distance(corner, first, other_way) || lowered_by_other;
  if (lowered_by_other) nearest = swapped(other_way);
  return lowered || lowered_by_other;
}

}  // namespace

Facet::Facet(const Vector& a, const Vector& b, const Vector& c)
    : corner{a, b, c},
      along{b - a, c - b, a - c},
      normal(cross(along[0], along[1])),
      outward{cross(along[0], normal), cross(along[1], normal), cross(along[2], normal)} {}

bool lower_to_distance(const Vector& point, const Facet& facet, NearestPair& nearest) {
  if (lies_over(point, facet)) {
    const double height = dot(facet.normal, point - facet.corner[0]);
    const Vector foot = point - facet.normal * (height / dot(facet.normal, facet.normal));
    return lower_to_pair(point, foot, nearest);
  }
  bool lowered = false;
  for (std::size_t i = 0; i < 3; ++i) {
    // The nearest point lies on an edge that can be seen from here.
    if (!is_flat(facet) && dot(facet.outward[i], point - facet.corner[i]) <= 0) continue;
    lowered = lower_to_pair(point, nearest_on_edge(point, facet, i), nearest) || lowered;
  }
  return lowered;
}

bool lower_to_distance(const Facet& first, const Facet& second, NearestPair& nearest) {
  if (is_apart_along(first.normal, first, second, nearest.distance_mm)) return false;
  if (is_apart_along(second.normal, first, second, nearest.distance_mm)) return false;
  Vector at;
  if (is_pierced(first, second, at) || is_pierced(second, first, at))
    return lower_to_pair(at, at, nearest);
  bool lowered = lower_to_corners(first, second, nearest);
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j)
      lowered = lower_to_edges(first, i, second, j, nearest) || lowered;
  }
  return lowered;
}

}  // namespace brimwright::geometry
