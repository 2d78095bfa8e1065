#pragma once

#include "geometry/levels/level.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Columns of liquid under some facets: heights z1 <= z2 <= z3 of the corners, and the area of the
/// horizontal projection, positive where the facet faces up.
struct FacetColumns {
  static constexpr std::size_t most = 32;
  using Numbers = std::array<double, most>;
  Numbers z1, z2, z3, area;
  Numbers mean;   // height of the corners
  Numbers lower;  // area / [(z2 - z1) (z3 - z1)], anything if z1 = z2
  Numbers upper;  // area / [(z3 - z2) (z3 - z1)], anything if z2 = z3

  void set(std::size_t i, double low, double middle, double high, double own_area);
};

/// Sums facets' columns of liquid below each of many depths.
///
/// For a facet with signed horizontal area a and heights z1 <= z2 <= z3 the column below h is a
/// times: 0 up to z1; (h-z1)^3 / [3 (z2-z1)(z3-z1)] up to z2; h - mean z + (z3-h)^3 /
/// [3 (z3-z1)(z3-z2)] up to z3; h - mean z beyond. The volume is minus the sum.
class LevelSums {
 public:
  /// Depths from 0 to the height, in any order.
  explicit LevelSums(const std::vector<double>& depths);

  /// Heights count from the solid's lowest point; facets begin below its height.
  void add(const FacetColumns& columns, std::size_t count);

  /// In the order of the depths, to about 1e-14 of the volume up to the height.
  std::vector<Level> levels();

 private:
  template <class Number>
  struct Term {
    Number column = 0, area = 0;
  };

  std::size_t cell_of(double height) const;
  std::size_t depth_at_or_above(double height) const;
  std::size_t add_crossing(const FacetColumns& columns, std::size_t i, std::size_t k);
  void settle();

  std::vector<double> wanted_;
  std::vector<double> depths_;        // within the solid, ascending, and then infinities
  std::vector<std::uint32_t> first_;  // for each cell of heights, the first depth not below it
  double cells_per_mm_ = 0, last_cell_ = 0;
  // For each depth, the columns below it of the facets that cross it, and their slopes; and the
  // moments and areas of the facets that end there or just below. First of the last facets added,
  // then of all before.
  std::vector<double> recent_columns_, recent_slopes_;
  std::vector<Term<double>> recent_ends_;
  std::vector<Term<long double>> crossing_, ending_;
  std::size_t recent_facets_ = 0;
};

}  // namespace brimwright::geometry
