#pragma once

#include "geometry/beads/move.h"
#include "geometry/beads/nozzle.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"
#include "units/angle.h"
#include "units/quantity.h"

#include <optional>
#include <vector>

namespace brimwright::geometry {

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

/// What each move lays down. The section is the opening's area times `bead_to_opening`, by which
/// the bead is larger than the opening; a spiral's length is its arc's, in closed form (the
/// integral of sqrt(a^2 + (b + c t)^2)).
std::vector<Laid> laid_by(const std::vector<Move>& moves, const Opening& opening,
                          double bead_to_opening);

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
                                double bead_to_opening, double facet_mm = 1.0);

/// The first move whose bead reaches further than `radius` from the axis, and how far that is. The
/// section is taken as wide every way as it is to its farthest corner: a nozzle is held anyhow.
struct Strayed {
  std::size_t move = 0;
  Length reach;
};
std::optional<Strayed> strays_beyond(Length radius, const std::vector<Move>& moves,
                                     const Opening& opening, double bead_to_opening);

}  // namespace brimwright::geometry
