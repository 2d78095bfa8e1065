#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "planning/dividing.h"
#include "units/quantity.h"
#include "units/remark.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace brimwright::planning {

std::string name_of(Axis axis);

/// A loaf is sliced: each bar is as wide and as high as the loaf is.
struct Slices {
  Length thickness;
};
/// A slab is cut on the plan, lengthwise and across.
struct Grid {
  Length length, width;
};
using BarSize = std::variant<Slices, Grid>;  // finished, after planing

/// How a loaf or slab is cut into bars. In the order of the hands: the top is planed, sides and
/// ends are trimmed, bars are cut, their cut faces planed.
struct Cut {
  BarSize bar;
  /// Slices: the direction in which bar follows bar; absent, the longer side of the plan. z is for
  /// a column. Grid: the direction in which the bars' length lies; absent, the one that gives more.
  std::optional<Axis> along = {};
  // Off each end, and off each side, the kerf of the trimming cut included. Ends are those of the
  // slicing direction; a slab's are those of its longer side.
  Length end_trim = {}, side_trim = {};
  Length top_planing = {};   // off the set top
  Length kerf = {};          // lost at each cut: 0 for a wire, a blade's set for a saw
  Length face_planing = {};  // off both broad faces of a slice; off all four sides of a grid's bar
};

/// One bar, finished.
struct Bar {
  std::int64_t row = 0, column = 0;  // from the low end of either direction, from 0
  Length along, across, height;      // of the box round it; height is the third direction's
  std::vector<Volume> layers;        // of each layer's batter in it, lowest first
  Volume volume;                     // of its part of the loaf, with what lies in it
};

/// What is set into a loaf and cut with it, such as a rod: closed, outward-facing solids in the
/// loaf's frame, of which `holding` times their volume is the real one.
struct Inclusion {
  std::vector<std::vector<geometry::TriangleMesh>> in_layers = {};  // room taken from each layer
  std::vector<geometry::TriangleMesh> proud = {};                   // what stands out of the loaf
  double holding = 1;
};

/// Where one material of a loaf ends.
struct Parted {
  std::vector<Volume> bars;  // as CutTally::bars
  Volume offcuts, kerf, planing;

  Parted& operator+=(const Parted& other);
  Parted& operator-=(const Parted& other);
  Volume in_bars() const;
  Volume whole() const { return in_bars() + offcuts + kerf + planing; }
};

/// The planes of a cut, for cutting more solids with them.
struct Knife {
  Pattern pattern = {};
  std::optional<Length> planed_to = {};  // height in the mould's frame
};

/// A size at which the loaf gives more: one more slice, or one more row or column. It is the
/// largest such size but for rounding it down to what is shown.
struct OneMore {
  Axis direction = Axis::x;  // in which there is one more
  Length size;               // of the finished bar in that direction
  std::int64_t bars = 0;
  std::string text = {};  // the size in millimetres and inches; typed back, either gives as many
};

/// What comes out of one loaf. bars + offcuts + kerf + planing = loaf, in which what lies within
/// counts as loaf; `layers` and `inclusions` tell each material apart.
struct CutTally {
  Axis along = Axis::x, across = Axis::y;  // the directions of columns and rows
  std::optional<Axis> length_lies = {};    // of a grid's bars
  std::int64_t columns = 0, rows = 0;
  Length usable_along, usable_across;  // what trimming leaves of the loaf
  std::vector<Bar> bars;               // row after row; without those too small to be one
  Volume least, mean, greatest;        // of a bar
  Volume loaf;                         // as poured
  Volume offcuts;                      // trims, remnants, and pieces too small to be a bar
  Volume kerf;
  Volume planing;                         // off the top and off the bars' faces
  std::optional<std::int64_t> other_way;  // bars of a grid with their length the other way
  std::vector<OneMore> one_more;          // columns first
  std::vector<Parted> layers;             // of batter, without the room that inclusions take
  std::vector<Parted> inclusions;         // in the order given
  std::optional<Parted> topping = {};     // piped on the whole loaf
  std::vector<double> top = {};           // each bar's share of the top's area; with offcuts' 1
  Knife knife;
  std::vector<Remark> remarks;

  Volume in_bars() const { return static_cast<double>(bars.size()) * mean; }
};

}  // namespace brimwright::planning
