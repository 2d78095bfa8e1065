#pragma once

#include "units/quantity.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// A direction of the mould: x and y on the plan, z up.
enum class Axis { x, y, z };

/// How one direction of a loaf is divided.
///
/// Both ends are trimmed first. Then bars are cut off one after the other from the low end, each
/// thicker than a finished bar by what is planed off its two faces; each cut loses the kerf. With
/// n bars there are n - 1 cuts between them, so that they take n (size + 2 planing) + (n - 1) kerf,
/// and n is the greatest whole number for which that is no more than what trimming leaves. What
/// then remains at the high end is cut off the last bar, which loses a kerf of it once more.
struct Division {
  Length from, to;      // of the loaf
  Length trim;          // off each end, the kerf of the trimming cut included
  Length size;          // of a finished bar, above zero
  Length kerf;          // lost at each cut
  Length planing = {};  // off each of the two faces of a bar, afterwards

  Length usable() const { return to - from - 2 * trim; }
  /// How many bars come out. A hundredth of a millimetre that is short does not cost the last bar:
  /// that is below any cutter's error (common practice, no source) and above the rounding of a mesh
  /// in single precision, so a division that is exact on paper counts.
  std::int64_t bars() const;
  /// The largest finished bar of which `count` come out; zero or less where none does.
  Length largest(std::int64_t count) const;
};

/// Columns follow each other in one direction, rows in the other.
struct Pattern {
  Axis along = Axis::x, across = Axis::y;
  Division columns = {}, rows = {};

  std::int64_t pieces() const { return columns.bars() * rows.bars(); }
};

/// Where a strip of the loaf ends up.
enum class Destination { bars, offcuts, kerf, planing };

/// The loaf between two planes across the direction that is divided.
struct Strip {
  Destination destination;
  Length from, to;
};

/// All strips from the low end to the high one, without a gap. A trim or a remnant no thicker than
/// the kerf is all kerf.
std::vector<Strip> strips_of(const Division& division);

}  // namespace brimwright::planning
