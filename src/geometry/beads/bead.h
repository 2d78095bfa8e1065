#pragma once

#include "geometry/beads/nozzle.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"
#include "units/angle.h"
#include "units/quantity.h"

#include <optional>
#include <variant>
#include <vector>

namespace brimwright::geometry {

// What a nozzle's moves lay down on a level floor at z = 0, round the z axis. Where a move says no
// height it starts on the floor, but a spiral or tail goes on where the spiral, ring or bead before
// it ended (a spiral at that height and angle, a tail on top of that bead's end or, if a dollop
// came last, on top of the dollop in the middle).

/// Half an ellipsoid standing on the floor in the middle: pi d^2 h / 6.
struct Dollop {
  Length diameter, height;
  std::optional<Length> at_height = {};
};
/// A closed ring; `radius` is its centre line's. Volume by Pappus: section x 2 pi radius.
struct Ring {
  Length radius;
  std::optional<Length> at_height = {};
};
/// A spiral whose radius and height change evenly with its angle, `start_radius` to `end_radius`
/// (of the centre line) and up by `rise` in `turns` turns.
struct ConicalSpiral {
  double turns = 0;
  Length start_radius, end_radius, rise;
  std::optional<Length> at_height = {};
};
/// The bead drawn straight up to a point, a cone over the section: section x length / 3.
struct Tail {
  Length length;
  std::optional<Length> at_height = {};
};
/// Upright dabs, evenly on a circle (one alone stands in its middle if the radius is 0), each with
/// the section at its foot and narrowing as half an ellipsoid does: 2/3 section x height.
struct Dots {
  int count = 0;
  Length circle_radius, height;
  std::optional<Length> at_height = {};
};
/// Short strokes lying outward from a circle, each starting with the whole section, which then
/// falls evenly to nothing, as the hand lets go, lying on the floor: section x length / 2.
struct Shells {
  int count = 0;
  Length circle_radius, length;
  std::optional<Length> at_height = {};
};
/// A bead of that length along x, centred, `aside` from the middle along y.
struct StraightBead {
  Length length;
  Length aside = {};
  std::optional<Length> at_height = {};
};
using Move = std::variant<Dollop, Ring, ConicalSpiral, Tail, Dots, Shells, StraightBead>;

/// UserError at `where` for a size that is not a number, below 0.01 mm (a spiral's and a circle's
/// radii, a rise and heights may be zero) or above 2 m, turns outside 0.01 to 100, a count outside
/// 1 to 500, dots that would all stand in one place, a spiral that goes nowhere.
void check(const Move& move, const Place& where);
/// The same for each, at `where` followed by "/" and its number from 0; and for moves so many and
/// long that their solids would have more than two million corners (some 100 m of bead).
void check(const std::vector<Move>& moves, const Opening& opening, const Place& where);

/// How far the nozzle travels pressing, and what it lays down.
struct Laid {
  Length length;  // of the centre line; none for a dollop
  Volume volume;
};

/// What each move lays down. The section is the opening's area times `swell`, by which the bead is
/// larger than the opening; a spiral's length is its arc's, in closed form (the integral of
/// sqrt(a^2 + (b + c t)^2)).
std::vector<Laid> laid_by(const std::vector<Move>& moves, const Opening& opening, double swell);

/// One solid for each bead, dollop and dab, closed and outward-facing, in the moves' order; a ring
/// is a closed tube. Sections stand across the path, turned as little as it lets them. Beads lie on
/// the floor, or as high above it as a move says, with their section's lowest corner.
///
/// Corners are moved outward so that facets enclose what `laid_by` says, as polygon_of does:
/// exactly so for all but a spiral, to some 1e-4 for one. That is where a solid does not overlap
/// itself; a tight or pressed spiral does, as do beads laid into each other. Where a path bends
/// more tightly than its bead is wide, the bead's inside ends at the bend's centre.
///
/// `facet_mm`: the longest step along a path, at least 0.1 mm (std::logic_error). Steps turn by at
/// most 7.5 degrees of the circle. std::length_error for more than 20 million corners.
std::vector<TriangleMesh> swept(const std::vector<Move>& moves, const Opening& opening,
                                double swell, double facet_mm = 1.0);

/// The first move whose bead reaches further than `radius` from the axis, and how far that is. The
/// section is taken as wide every way as it is to its farthest corner: a nozzle is held anyhow.
struct Strayed {
  std::size_t move = 0;
  Length reach;
};
std::optional<Strayed> strays_beyond(Length radius, const std::vector<Move>& moves,
                                     const Opening& opening, double swell);

}  // namespace brimwright::geometry
