#pragma once

#include "geometry/levels/level_table.h"
#include "geometry/levels/stl_scan_kernel.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Sums facets' columns of liquid below each of many depths.
///
/// For a facet with signed horizontal area a and heights z1 <= z2 <= z3 the column below h is a
/// times: 0 up to z1; (h-z1)^3 / [3 (z2-z1)(z3-z1)] up to z2; h - mean z + (z3-h)^3 /
/// [3 (z3-z1)(z3-z2)] up to z3; h - mean z beyond. The volume is minus the sum.
class LevelSums {
 public:
  LevelSums(const std::vector<Length>& depths, double height);

  /// Heights count from the solid's lowest point.
  void add(const FacetColumns& columns, std::size_t count);

  struct Outcome {
    std::vector<LevelRow> rows;  // as the depths were given; for a solid that faces outward
    bool inside_out = false;     // it faced inward
    bool finite = false;         // all that was added was
  };
  Outcome outcome();

 private:
  template <class Number>
  struct Term {
    Number column = 0, area = 0;
  };

  std::size_t cell_of(double height) const;
  std::size_t depth_at_or_above(double height) const;
  std::size_t add_crossing(const FacetColumns& columns, std::size_t i, std::size_t k);
  void settle();
  LevelRow row(Length depth, const std::vector<Term<long double>>& ended, bool inside_out) const;

  double height_;
  std::vector<Length> wanted_;
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
  double lid_ = 0;  // area of the facets that lie at the brim, which bound no liquid below it
};

}  // namespace brimwright::geometry
