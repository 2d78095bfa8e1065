#include "geometry/sections/facet_deficit.h"

#include "geometry/sections/plane_cut.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/vectors.h"

#include <cmath>
#include <vector>

namespace brimwright::geometry {
namespace {

using Outline = std::vector<FlatPoint>;

/// How far the line turns at its corner `i`, to the left above zero.
double turn_at(const Outline& line, std::size_t i) {
  const std::size_t n = line.size();
  const FlatPoint before = line[i] - line[(i + n - 1) % n];
  const FlatPoint after = line[(i + 1) % n] - line[i];
  return std::atan2(cross(before, after), dot(before, after));
}

/// Without the points that a flat wall's facets leave within a straight piece.
Outline straightened(const ClosedLine& line) {
  Outline all;
  for (const Point& p : line) all.push_back({p[0], p[1]});
  Outline corners;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (std::abs(turn_at(all, i)) > 0.01 * pi / 180) corners.push_back(all[i]);
  return corners;
}

double enclosed_area(const Outline& line) {
  double area = 0;
  for (std::size_t i = 0; i < line.size(); ++i) {
    area += cross(line[i], line[(i + 1) % line.size()]) / 2;
  }
  return area;
}

/// What lies between the straight pieces and the arcs that they stand for: a chord c at whose ends
/// the line turns by t stands for an arc of radius c / t, and c^3 / (12 r) lies between the two.
double missing_area(const Outline& line) {
  constexpr double edge_that_is_meant = 40 * pi / 180;
  const std::size_t n = line.size();
  std::vector<double> turn(n);
  for (std::size_t i = 0; i < n; ++i) {
    turn[i] = turn_at(line, i);
    if (std::abs(turn[i]) > edge_that_is_meant) turn[i] = 0;
  }
  double missing = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const double chord = length(line[(i + 1) % n] - line[i]);
    missing += chord * chord * (turn[i] + turn[(i + 1) % n]) / 2 / 12;
  }
  return missing;
}

}  // namespace

Share facet_deficit(const TriangleMesh& cavity) {
  const Box box = bounding_box(cavity);
  const double middle = (box.low_mm[2] + box.high_mm[2]) / 2;
  double area = 0, missing = 0;
  for (const ClosedLine& line : plane_section(cavity, Plane::level(middle))) {
    const Outline outline = straightened(line);
    area += enclosed_area(outline);
    missing += missing_area(outline);
  }
  return Share::of_one(area > 0 ? missing / area : 0);
}

}  // namespace brimwright::geometry
