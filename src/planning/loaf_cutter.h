#pragma once

#include "geometry/enclosed_volume.h"
#include "geometry/triangle_mesh.h"
#include "planning/cutting.h"
#include "planning/dividing.h"
#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace brimwright::planning {

inline std::size_t index(Axis axis) { return static_cast<std::size_t>(axis); }

/// A box round nothing, to be widened.
constexpr geometry::Box empty_box() {
  constexpr double beyond = std::numeric_limits<double>::infinity();
  return {{beyond, beyond, beyond}, {-beyond, -beyond, -beyond}};
}

/// What there is to cut once the top is planed. Volumes here are those of the solids.
struct Loaf {
  std::vector<geometry::TriangleMesh> layers;
  geometry::Box box;
  Volume whole, planed;

  Length low(Axis axis) const { return box.low_mm[index(axis)] * millimetre; }
  Length high(Axis axis) const { return box.high_mm[index(axis)] * millimetre; }
  Length reach(Axis axis) const { return high(axis) - low(axis); }
};

/// `layers` as one loaf with `top_planing`, less than its height, planed off. std::logic_error
/// where there is none.
Loaf planed_loaf(std::vector<geometry::TriangleMesh> layers, Length top_planing);

/// Columns follow each other in one direction, rows in the other.
struct Pattern {
  Axis along, across;
  Division columns, rows;

  std::int64_t pieces() const { return columns.bars() * rows.bars(); }
};

/// One piece of the pattern while its layers are added up.
struct Piece {
  std::vector<Volume> layers;
  Volume volume;
  geometry::Box box = empty_box();
};

/// The pieces of a loaf cut to a pattern, and where all else of it ends.
///
/// Rows are cut first, through the whole loaf, then each row is trimmed and cut in columns, and
/// each piece is planed. Every part is measured by itself and nothing as a remainder, by the level
/// curve of its row with the columns' direction up.
class LoafCutter {
 public:
  LoafCutter(const Loaf& loaf, const Pattern& pattern);

  const std::vector<Piece>& pieces() const { return pieces_; }  ///< row after row
  Volume volume(Goes goes) const { return volumes_[static_cast<std::size_t>(goes)]; }

 private:
  void cut_rows(const geometry::TriangleMesh& part, std::span<const Strip> strips, std::size_t row);
  void cut_columns(const geometry::TriangleMesh& row, Goes row_goes, std::size_t row_number);
  void add(Goes goes, Volume volume) { volumes_[static_cast<std::size_t>(goes)] += volume; }

  Pattern pattern_;
  std::vector<Strip> rows_, columns_;
  std::size_t layer_ = 0;
  std::vector<Piece> pieces_;
  std::array<Volume, 4> volumes_;
};

}  // namespace brimwright::planning
