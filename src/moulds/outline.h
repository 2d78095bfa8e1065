#pragma once

#include "units/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::moulds {

/// A closed polygon in the plane, x and y in millimetres, anticlockwise; the last point joins the
/// first.
using Outline = std::vector<std::array<double, 2>>;

/// The same points as an Outline, turned anticlockwise if they ran the other way.
Outline outline_of(const std::vector<std::pair<Length, Length>>& points);

/// What keeps points from bounding one piece of the plane.
struct OutlineFlaw {
  std::string words;                 // a maker's, points counted from one
  std::optional<std::size_t> point;  // the first that it is about, from 0
};

/// The first flaw of `points`; nothing when they bound one piece. Looks for repeated points, edges
/// folding back and crossing edges.
std::optional<OutlineFlaw> flaw_of(const std::vector<std::pair<Length, Length>>& points);

/// The area left inside when a closed wall moves inward by d everywhere: area - perimeter d + c
/// d^2.
///
/// Steiner's formula for parallel bodies, inward (Santalo, Integral Geometry, 1.I.1). For straight
/// walls c is the sum of cot(half the interior angle) over the corners; a rounded corner that
/// shrinks to nothing at its own centre counts half its turning angle, so a whole circle has c =
/// pi.
struct InsetArea {
  Area area;
  Length perimeter;
  double c = 0;

  Area at(Length d) const { return area - d * perimeter + d * d * c; }
};
InsetArea inset_area(const Outline& outline);

/// `outline` with every edge moved inward by `d`, inward corners mitred (their edges grow until
/// they meet). Has as many points as `outline`; sound for d below greatest_inset.
Outline inset(const Outline& outline, Length d);

/// The inset at which an edge of `outline` first runs out or a corner first meets another wall.
Length greatest_inset(const Outline& outline);

/// Triangles that fill `outline`, anticlockwise, by cutting off ears.
std::vector<std::array<std::uint32_t, 3>> filled(const Outline& outline);

}  // namespace brimwright::moulds
