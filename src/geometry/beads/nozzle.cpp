#include "geometry/beads/nozzle.h"

#include "geometry/beads/flat_outline.h"
#include "units/printing.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace brimwright::geometry {
namespace {

// Nozzles are 1 to 50 mm wide (common practice, no source); these limits only keep out what cannot
// have been meant.
constexpr Length least_size = 0.1 * millimetre, greatest_size = 200 * millimetre;
constexpr int most_star_points = 100;
constexpr std::size_t most_outline_points = 1000;  // sides are compared each with each
constexpr int decimals = 3;                        // of a size in a complaint

void check_radius(const std::string& name, Length radius, const Place& where) {
  if (radius >= least_size && radius <= greatest_size) return;  // false for not a number
  throw UserError(
      where, "has " + name + " of " + in_mm(radius, decimals),
      "give from " + in_mm(least_size, decimals) + " to " + in_mm(greatest_size, decimals));
}

void check_opening(const RoundOpening& round, const Place& where) {
  check_radius("a radius", round.radius, where);
}

void check_opening(const StarOpening& star, const Place& where) {
  if (star.points < 3 || star.points > most_star_points)
    throw UserError(where, "is a star of " + std::to_string(star.points) + " points",
                    "give from 3 to " + std::to_string(most_star_points));
  check_radius("an outer radius", star.outer_radius, where);
  check_radius("an inner radius", star.inner_radius, where);
  if (star.inner_radius < star.outer_radius) return;
  throw UserError(where,
                  "has an inner radius of " + in_mm(star.inner_radius, decimals) +
                      ", which is not below its outer radius of " +
                      in_mm(star.outer_radius, decimals),
                  "measure the inner radius from the middle to the valley between two points, the "
                  "outer one to a point's end");
}

void check_point_count(std::size_t count, const Place& where) {
  if (count >= 3 && count <= most_outline_points) return;
  throw UserError(where, "is an outline of " + std::to_string(count) + " points",
                  "give from 3 to " + std::to_string(most_outline_points));
}

void check_opening(const OutlineOpening& outline, const Place& where) {
  const auto& points = outline.points_mm;
  check_point_count(points.size(), where);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto is_far = [](double c) { return !(std::abs(c) <= greatest_size / millimetre); };
    if (!is_far(points[i][0]) && !is_far(points[i][1])) continue;
    throw UserError(where,
                    "has a point " + std::to_string(i + 1) + " at (" + trimmed(points[i][0], 3) +
                        ", " + trimmed(points[i][1], 3) + ") mm",
                    "give points within " + in_mm(greatest_size, decimals) + " of the middle");
  }
  if (const auto sides = meeting_sides(points)) {
    const auto& [first, second] = *sides;
    throw UserError(where,
                    "crosses or touches itself: the side from point " + std::to_string(first + 1) +
                        " and that from point " + std::to_string(second + 1) + " meet",
                    "give the points in order once round the opening, each of them once (the last "
                    "is joined to the first)");
  }
  if (std::abs(signed_area_mm2(points)) >= least_size * least_size / square_millimetre) return;
  throw UserError(where, "is an outline round next to nothing",
                  "give the points in order round the opening, in millimetres");
}

/// n corners in turn on circles of these radii, the first straight up.
FlatOutline corners_on(const std::vector<double>& radii_mm) {
  FlatOutline corners;
  const auto count = static_cast<double>(radii_mm.size());
  for (std::size_t i = 0; i < radii_mm.size(); ++i) {
    const double angle = 2 * pi * static_cast<double>(i) / count;
    corners.push_back({-radii_mm[i] * std::sin(angle), radii_mm[i] * std::cos(angle)});
  }
  return corners;
}

FlatOutline polygon(const RoundOpening& round, int facets) {
  // A regular n-gon has the area n/2 r^2 sin(2 pi / n).
  const double widened = std::sqrt(2 * pi / (facets * std::sin(2 * pi / facets)));
  const auto count = static_cast<std::size_t>(facets);
  return corners_on(std::vector<double>(count, widened * (round.radius / millimetre)));
}

FlatOutline polygon(const StarOpening& star, int) {
  std::vector<double> radii_mm;
  for (int point = 0; point < star.points; ++point) {
    radii_mm.push_back(star.outer_radius / millimetre);
    radii_mm.push_back(star.inner_radius / millimetre);
  }
  return corners_on(radii_mm);
}

FlatOutline polygon(const OutlineOpening& outline, int) {
  FlatOutline corners = outline.points_mm;
  if (signed_area_mm2(corners) < 0) std::reverse(corners.begin(), corners.end());
  const FlatPoint centre = centre_of_area(corners);
  for (FlatPoint& corner : corners) corner = {corner[0] - centre[0], corner[1] - centre[1]};
  return corners;
}

Area area(const RoundOpening& round) { return pi * (round.radius * round.radius); }
Area area(const StarOpening& star) {
  return star.points * (star.outer_radius * star.inner_radius) * std::sin(pi / star.points);
}
Area area(const OutlineOpening& outline) {
  return std::abs(signed_area_mm2(outline.points_mm)) * square_millimetre;
}

Opening larger(RoundOpening round, double factor) {
  round.radius *= factor;
  return round;
}
Opening larger(StarOpening star, double factor) {
  star.outer_radius *= factor;
  star.inner_radius *= factor;
  return star;
}
Opening larger(OutlineOpening outline, double factor) {
  for (FlatPoint& point : outline.points_mm) point = {point[0] * factor, point[1] * factor};
  return outline;
}

}  // namespace

void check(const Opening& opening, const Place& where) {
  std::visit([&](const auto& kind) { check_opening(kind, where); }, opening);
}

Area area_of(const Opening& opening) {
  return std::visit([](const auto& kind) { return area(kind); }, opening);
}

Opening scaled(const Opening& opening, double factor) {
  return std::visit([&](const auto& kind) { return larger(kind, factor); }, opening);
}

std::vector<std::array<double, 2>> polygon_of(const Opening& opening, int round_facets) {
  return std::visit([&](const auto& kind) { return polygon(kind, round_facets); }, opening);
}

}  // namespace brimwright::geometry
