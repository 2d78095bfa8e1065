#include "geometry/beads/bead_solids.h"

#include "geometry/beads/bead_path.h"
#include "geometry/beads/sweep.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace brimwright::geometry {
namespace {

constexpr double least_facet_mm = 0.1;
constexpr std::size_t most_corners = 20'000'000;  // of all solids, about 1 GB

std::size_t steps_for(double length_mm, double facet_mm, std::size_t least, std::size_t most) {
  const double steps = std::ceil(length_mm / facet_mm);
  return std::clamp(static_cast<std::size_t>(steps), least, most);
}

/// From the foot to the tip of half an ellipsoid; a quarter of its outline is below height + radius
/// long.
std::size_t ellipsoid_steps(double height_mm, double radius_mm, double facet_mm) {
  return steps_for(height_mm + radius_mm, facet_mm, 12, 90);
}
std::size_t shell_steps(const Shells& shells, double facet_mm) {
  return steps_for(shells.length / millimetre, facet_mm, 12, 90);
}
std::size_t dollop_corners(const Dollop& dollop, double facet_mm) {
  return steps_for(pi * (dollop.diameter / millimetre), facet_mm, 24, 360);
}

/// width^2 + along^2 = 1, in even steps of angle.
Taper half_ellipsoid(std::size_t steps) {
  Taper taper{.steps = {}, .volume_share = 2.0 / 3, .lying = false};
  for (std::size_t i = 0; i < steps; ++i) {
    const double angle = pi / 2 * static_cast<double>(i) / static_cast<double>(steps);
    taper.steps.push_back({.along = std::sin(angle), .width = std::cos(angle)});
  }
  return taper;
}

/// width^2 + along = 1, in even steps of width.
Taper falling_evenly(std::size_t steps) {
  Taper taper{.steps = {}, .volume_share = 1.0 / 2, .lying = true};
  for (std::size_t i = 0; i < steps; ++i) {
    const double width = 1 - static_cast<double>(i) / static_cast<double>(steps);
    taper.steps.push_back({.along = 1 - width * width, .width = width});
  }
  return taper;
}

const Taper cone = {.steps = {{.along = 0, .width = 1}}, .volume_share = 1.0 / 3, .lying = false};
constexpr Frame upright = {.aside = {1, 0, 0}, .up = {0, 1, 0}};  // of a section that lies level

/// Lays one move after the other.
class Laying {
 public:
  Laying(const FlatOutline& corners, const SectionReach& reach, double facet_mm)
      : section_(section_of(corners)), reach_(reach), facet_mm_(facet_mm) {}

  void lay(const Dollop& dollop, const MoveStart& start) {
    const Length radius = dollop.diameter / 2;
    const auto corners = static_cast<int>(dollop_corners(dollop, facet_mm_));
    const Section circle = section_of(polygon_of(RoundOpening{.radius = radius}, corners));
    const double height = dollop.height / millimetre;
    const std::size_t steps = ellipsoid_steps(height, radius / millimetre, facet_mm_);
    add(tapered(circle, start.at_mm, upright, {0, 0, height}, half_ellipsoid(steps)));
  }

  void lay(const Tail& tail, const MoveStart& start) {
    add(tapered(section_, start.at_mm, upright, {0, 0, tail.length / millimetre}, cone));
  }

  void lay(const Dots& dots, const MoveStart& start) {
    const double height = dots.height / millimetre;
    const Taper dab = half_ellipsoid(ellipsoid_steps(height, reach_.any_way_mm, facet_mm_));
    for (const Vector& outward : directions(dots.count)) {
      const Vector foot = start.at_mm + outward * (dots.circle_radius / millimetre);
      add(tapered(section_, foot, upright, {0, 0, height}, dab));
    }
  }

  void lay(const Shells& shells, const MoveStart& start) {
    const Taper stroke = falling_evenly(shell_steps(shells, facet_mm_));
    for (const Vector& outward : directions(shells.count)) {
      const Vector foot = start.at_mm + outward * (shells.circle_radius / millimetre) +
                          Vector{0, 0, reach_.below_mm};
      const Frame across = {.aside = cross({0, 0, 1}, outward), .up = {0, 0, 1}};
      add(tapered(section_, foot, across, outward * (shells.length / millimetre), stroke));
    }
  }

  template <class Bead>
  void lay(const Bead& bead, const MoveStart& start) {
    add(swept_along(path_of(bead, start, facet_mm_), section_));
  }

  std::vector<TriangleMesh> solids() && { return std::move(solids_); }

 private:
  /// Evenly round the axis, the first along x.
  static std::vector<Vector> directions(int count) {
    std::vector<Vector> outward;
    for (int i = 0; i < count; ++i) {
      const double angle = 2 * pi * i / count;
      outward.push_back({std::cos(angle), std::sin(angle), 0});
    }
    return outward;
  }
  void add(TriangleMesh solid) { solids_.push_back(std::move(solid)); }

  Section section_;
  SectionReach reach_;
  double facet_mm_;
  std::vector<TriangleMesh> solids_;
};

std::size_t corners(const Dollop& dollop, std::size_t, double facet_mm) {
  const double radius = dollop.diameter / millimetre / 2;
  return dollop_corners(dollop, facet_mm) *
         ellipsoid_steps(dollop.height / millimetre, radius, facet_mm);
}
std::size_t corners(const Tail&, std::size_t section, double) { return section; }
std::size_t corners(const Dots& dots, std::size_t section, double facet_mm) {
  // A nozzle's radius is below 200 mm, which for this count is near enough.
  const std::size_t most = ellipsoid_steps(dots.height / millimetre, 200, facet_mm);
  return static_cast<std::size_t>(dots.count) * section * most;
}
std::size_t corners(const Shells& shells, std::size_t section, double facet_mm) {
  return static_cast<std::size_t>(shells.count) * section * shell_steps(shells, facet_mm);
}
template <class Bead>
std::size_t corners(const Bead& bead, std::size_t section, double facet_mm) {
  return section * points_of(bead, facet_mm);
}

}  // namespace

std::size_t corners_of(const Move& move, std::size_t section_corners, double facet_mm) {
  return std::visit([&](const auto& kind) { return corners(kind, section_corners, facet_mm); },
                    move);
}

std::vector<TriangleMesh> swept(const std::vector<Move>& moves, const Opening& opening,
                                double bead_to_opening, double facet_mm) {
  if (!(facet_mm >= least_facet_mm)) throw std::logic_error("facets would be too fine");
  const FlatOutline section = polygon_of(scaled(opening, std::sqrt(bead_to_opening)));
  std::size_t all = 0;
  for (const Move& move : moves) all += corners_of(move, section.size(), facet_mm);
  if (all > most_corners) throw std::length_error("the beads would have too many facets");

  const SectionReach reach = reach_of(opening, bead_to_opening);
  const auto starts = starts_of(moves, reach);
  Laying laying(section, reach, facet_mm);
  for (std::size_t i = 0; i < moves.size(); ++i)
    std::visit([&](const auto& kind) { laying.lay(kind, starts[i]); }, moves[i]);
  return std::move(laying).solids();
}

}  // namespace brimwright::geometry
