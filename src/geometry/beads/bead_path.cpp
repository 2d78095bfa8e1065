#include "geometry/beads/bead_path.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace brimwright::geometry {
namespace {

constexpr std::size_t least_steps_per_turn = 48;  // 7.5 degrees

std::size_t steps_for(double length_mm, double facet_mm) {
  return static_cast<std::size_t>(std::max(1.0, std::ceil(length_mm / facet_mm)));
}

/// A spiral by its angle t from its own start: radius and height grow evenly.
struct SpiralLine {
  double radius = 0, height = 0, angle = 0;       // at the start
  double radius_by_angle = 0, rise_by_angle = 0;  // mm for each radian
  double whole = 0;                               // radians

  double radius_at(double t) const { return radius + radius_by_angle * t; }
  /// mm travelled for each radian.
  double speed_at(double t) const {
    return std::hypot(radius_at(t), radius_by_angle, rise_by_angle);
  }
};

SpiralLine line_of(const ConicalSpiral& spiral, const MoveStart& start) {
  const double whole = 2 * pi * spiral.turns;
  return {.radius = spiral.start_radius / millimetre,
          .height = start.at_mm[2],
          .angle = start.angle,
          .radius_by_angle = (spiral.end_radius - spiral.start_radius) / millimetre / whole,
          .rise_by_angle = spiral.rise / millimetre / whole,
          .whole = whole};
}

/// How many even steps in angle each quarter turn takes, the last quarter being cut short.
std::vector<std::size_t> quarter_steps(const SpiralLine& line, double facet_mm) {
  std::vector<std::size_t> steps;
  for (double from = 0; from < line.whole * (1 - 1e-12); from += pi / 2) {
    const double to = std::min(from + pi / 2, line.whole);
    // A radius that changes evenly is largest at an end.
    const double fastest = std::max(line.speed_at(from), line.speed_at(to));
    const double by_angle = (to - from) * static_cast<double>(least_steps_per_turn) / (2 * pi);
    steps.push_back(std::max(steps_for(by_angle, 1), steps_for(fastest * (to - from), facet_mm)));
  }
  return steps;
}

/// The path's next point, from its first and second derivative by the angle, in the directions
/// outward, onward and up at that angle.
void add_point(BeadPath& path, const SpiralLine& line, double t) {
  const double c = std::cos(line.angle + t), s = std::sin(line.angle + t);
  const Vector outward = {c, s, 0}, onward = {-s, c, 0}, up = {0, 0, 1};
  const double radius = line.radius_at(t), speed = line.speed_at(t);
  const Vector tangent =
      (outward * line.radius_by_angle + onward * radius + up * line.rise_by_angle) * (1 / speed);
  const Vector second = outward * -radius + onward * (2 * line.radius_by_angle);
  path.points_mm.push_back(outward * radius + up * (line.height + line.rise_by_angle * t));
  path.tangents.push_back(tangent);
  path.bends.push_back((second - tangent * dot(second, tangent)) * (1 / (speed * speed)));
}

}  // namespace

std::size_t points_of(const Ring& ring, double facet_mm) {
  return std::max(least_steps_per_turn, steps_for(2 * pi * (ring.radius / millimetre), facet_mm));
}

std::size_t points_of(const ConicalSpiral& spiral, double facet_mm) {
  const auto steps = quarter_steps(line_of(spiral, {}), facet_mm);
  return std::accumulate(steps.begin(), steps.end(), std::size_t{1});
}

std::size_t points_of(const StraightBead& bead, double facet_mm) {
  return steps_for(bead.length / millimetre, facet_mm) + 1;
}

BeadPath path_of(const Ring& ring, const MoveStart& start, double facet_mm) {
  BeadPath path{.points_mm = {}, .tangents = {}, .bends = {}, .is_closed = true};
  const std::size_t count = points_of(ring, facet_mm);
  const SpiralLine circle = {.radius = ring.radius / millimetre, .height = start.at_mm[2]};
  for (std::size_t i = 0; i < count; ++i)
    add_point(path, circle, 2 * pi * static_cast<double>(i) / static_cast<double>(count));
  return path;
}

BeadPath path_of(const ConicalSpiral& spiral, const MoveStart& start, double facet_mm) {
  BeadPath path;
  const SpiralLine line = line_of(spiral, start);
  const auto quarters = quarter_steps(line, facet_mm);
  for (std::size_t quarter = 0; quarter < quarters.size(); ++quarter) {
    const double from = static_cast<double>(quarter) * pi / 2;
    const double step =
        std::min(pi / 2, line.whole - from) / static_cast<double>(quarters[quarter]);
    for (std::size_t i = 0; i < quarters[quarter]; ++i)
      add_point(path, line, from + static_cast<double>(i) * step);
  }
  add_point(path, line, line.whole);
  return path;
}

BeadPath path_of(const StraightBead& bead, const MoveStart& start, double facet_mm) {
  BeadPath path;
  const std::size_t steps = points_of(bead, facet_mm) - 1;
  const double step = bead.length / millimetre / static_cast<double>(steps);
  for (std::size_t i = 0; i <= steps; ++i) {
    path.points_mm.push_back(start.at_mm + Vector{static_cast<double>(i) * step, 0, 0});
    path.tangents.push_back({1, 0, 0});
    path.bends.push_back({0, 0, 0});
  }
  return path;
}

/// With radii r0 to r1 over an angle t, b = (r1 - r0) / t, c = rise / t and a^2 = b^2 + c^2, the
/// length is the integral of sqrt(a^2 + r^2) dr / b = [r s + a^2 asinh(r / a)] / 2b, s being
/// sqrt(a^2 + r^2). Differences of both terms are divided by r1 - r0 by hand.
Length arc_length(const ConicalSpiral& spiral) {
  const SpiralLine line = line_of(spiral, {});
  const double r0 = line.radius, r1 = line.radius_at(line.whole);
  if (!(r0 + r1 > 0)) return spiral.rise;
  const double s0 = line.speed_at(0), s1 = line.speed_at(line.whole);
  const double a = std::hypot(line.radius_by_angle, line.rise_by_angle);
  const double products = (s0 + s1) / 2 + (r0 + r1) * (r0 + r1) / (2 * (s0 + s1));
  const double slope = (r0 + r1) / (r1 * s0 + r0 * s1);
  const double difference = r1 - r0;
  const double logarithms = difference == 0 ? slope : std::asinh(difference * slope) / difference;
  return line.whole / 2 * (products + a * a * logarithms) * millimetre;
}

}  // namespace brimwright::geometry
