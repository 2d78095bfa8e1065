#include "geometry/beads/bead.h"

#include "geometry/beads/bead_path.h"

#include <algorithm>
#include <cmath>

namespace brimwright::geometry {
namespace {

Laid bead(Length length, Area section) { return {.length = length, .volume = section * length}; }

Laid laid(const Dollop& dollop, Area) {
  return {.length = {}, .volume = pi / 6 * (dollop.diameter * dollop.diameter * dollop.height)};
}
Laid laid(const Ring& ring, Area section) { return bead(2 * pi * ring.radius, section); }
Laid laid(const ConicalSpiral& spiral, Area section) { return bead(arc_length(spiral), section); }
Laid laid(const StraightBead& straight, Area section) { return bead(straight.length, section); }
Laid laid(const Tail& tail, Area section) { return bead(tail.length, section / 3); }
Laid laid(const Dots& dots, Area section) {
  return bead(dots.count * dots.height, section * (2.0 / 3));
}
Laid laid(const Shells& shells, Area section) {
  return bead(shells.count * shells.length, section / 2);
}

/// How far the bead gets from the axis, its section reaching `wide` every way.
Length reach(const Dollop& dollop, const MoveStart&, Length) { return dollop.diameter / 2; }
Length reach(const Ring& ring, const MoveStart&, Length wide) { return ring.radius + wide; }
Length reach(const ConicalSpiral& spiral, const MoveStart&, Length wide) {
  return std::max(spiral.start_radius, spiral.end_radius) + wide;
}
Length reach(const Tail&, const MoveStart& start, Length wide) {
  return std::hypot(start.at_mm[0], start.at_mm[1]) * millimetre + wide;
}
Length reach(const Dots& dots, const MoveStart&, Length wide) { return dots.circle_radius + wide; }
/// Along a shell the square of the reach, (circle + t length)^2 + (1 - t) wide^2, is largest at an
/// end.
Length reach(const Shells& shells, const MoveStart&, Length wide) {
  const Length foot = sqrt(shells.circle_radius * shells.circle_radius + wide * wide);
  return std::max(foot, shells.circle_radius + shells.length);
}
Length reach(const StraightBead& straight, const MoveStart&, Length wide) {
  const Length aside = abs(straight.aside) + wide, half = straight.length / 2;
  return sqrt(half * half + aside * aside);
}

}  // namespace

std::vector<Laid> laid_by(const std::vector<Move>& moves, const Opening& opening,
                          double bead_to_opening) {
  const Area section = bead_to_opening * area_of(opening);
  std::vector<Laid> all;
  for (const Move& move : moves)
    all.push_back(std::visit([&](const auto& kind) { return laid(kind, section); }, move));
  return all;
}

std::optional<Strayed> strays_beyond(Length radius, const std::vector<Move>& moves,
                                     const Opening& opening, double bead_to_opening) {
  const SectionReach section = reach_of(opening, bead_to_opening);
  const auto starts = starts_of(moves, section);
  for (std::size_t i = 0; i < moves.size(); ++i) {
    const Length far = std::visit(
        [&](const auto& kind) { return reach(kind, starts[i], section.any_way_mm * millimetre); },
        moves[i]);
    if (far > radius) return Strayed{.move = i, .reach = far};
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
