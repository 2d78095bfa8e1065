#pragma once

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/triangle_mesh.h"
#include "planning/dividing.h"
#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
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
  Volume whole;
  std::vector<Volume> planed;  // off each layer

  Length low(Axis axis) const { return box.low_mm[index(axis)] * millimetre; }
  Length high(Axis axis) const { return box.high_mm[index(axis)] * millimetre; }
  Length reach(Axis axis) const { return high(axis) - low(axis); }
};

/// `layers` as one loaf with `top_planing`, less than its height, planed off. std::logic_error
/// where there is none.
Loaf planed_loaf(std::vector<geometry::TriangleMesh> layers, Length top_planing);

/// One piece of the pattern while its layers are added up.
struct Piece {
  std::vector<Volume> layers;
  Volume volume;
  geometry::Box box = empty_box();
};

/// Where one solid ends that is cut to a pattern.
struct SolidParts {
  std::vector<Volume> pieces;        // row after row
  std::vector<geometry::Box> boxes;  // round what of it is in each
  std::array<Volume, 4> destination = {};

  Volume volume(Destination where) const { return destination[static_cast<std::size_t>(where)]; }
};

/// Rows are cut first, through the whole solid, then each row is trimmed and cut in columns, and
/// each piece is planed. Every part is measured by itself and nothing as a remainder, by the level
/// curve of its row with the columns' direction up. What reaches beyond the pattern's ends
/// destination with its end strips.
SolidParts cut_to(const Pattern& pattern, const geometry::TriangleMesh& solid);

/// The pieces of a loaf cut to a pattern, by its layers, and where all else of it ends.
class LoafCutter {
 public:
  LoafCutter(const Loaf& loaf, const Pattern& pattern);

  const std::vector<Piece>& pieces() const { return pieces_; }       ///< row after row
  const std::vector<SolidParts>& layers() const { return layers_; }  ///< lowest first
  Volume volume(Destination destination) const;

 private:
  std::vector<SolidParts> layers_;
  std::vector<Piece> pieces_;
};

}  // namespace brimwright::planning
