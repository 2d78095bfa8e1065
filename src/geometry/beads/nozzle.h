#pragma once

#include "units/quantity.h"
#include "units/user_error.h"

#include <array>
#include <variant>
#include <vector>

namespace brimwright::geometry {

// The opening that a bead comes out of, a figure in the plane.

struct RoundOpening {
  Length radius;
};
/// A star with `points` straight-sided points: corners in turn on the outer and the inner circle.
struct StarOpening {
  int points = 0;
  Length outer_radius, inner_radius;
};
/// Any one closed line that does not cross itself, either way round.
struct OutlineOpening {
  std::vector<std::array<double, 2>> points_mm;
};
using Opening = std::variant<RoundOpening, StarOpening, OutlineOpening>;

/// UserError at `where` for a radius outside 0.1 to 200 mm or not a number, a star of fewer than 3
/// or more than 100 points or whose inner radius is not below its outer, an outline of fewer than 3
/// or more than 1000 points, with a point beyond 200 mm, that crosses or touches itself (a first
/// point said again at the end, too) or goes round nothing.
void check(const Opening& opening, const Place& where);

/// Round: pi r^2. Star of n points: n R r sin(pi / n), 2n triangles with sides R and r between
/// them. Outline: the shoelace formula.
Area area_of(const Opening& opening);

/// The same figure `factor` times as wide.
Opening scaled(const Opening& opening, double factor);

/// The opening as a polygon of exactly area_of(opening), anticlockwise, its centre of area at the
/// origin. `round_facets` corners stand for a circle (moved outward so that the area is kept).
std::vector<std::array<double, 2>> polygon_of(const Opening& opening, int round_facets = 24);

}  // namespace brimwright::geometry
