#pragma once

#include "units/quantity.h"

#include <optional>
#include <variant>

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

}  // namespace brimwright::geometry
