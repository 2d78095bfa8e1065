#pragma once

#include "geometry/vectors.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Facets sorted by where they lie seen from above, to ask what is over a point. They are best
/// alike in size: each is kept in every square of a grid that it may touch.
class FacetColumns {
 public:
  using Facet = std::array<Vector, 3>;  // anticlockwise seen from outside

  explicit FacetColumns(std::vector<Facet> facets);

  struct Above {
    int winding = 0;  // how many times the closed surfaces wind round the point
    bool any = false;
  };
  /// By the facets that a plumb line through the point meets above it. A line through an edge or
  /// corner meets just one of the facets there, and always the same, as if it had been moved by
  /// next to nothing.
  Above above(const Vector& point) const;

 private:
  struct Entry {
    double highest;
    std::uint32_t facet;
  };
  struct Cells {
    std::array<std::size_t, 2> low, high;
    std::size_t count() const { return (high[0] - low[0] + 1) * (high[1] - low[1] + 1); }
  };
  void lay_grid();
  std::array<std::size_t, 2> cell_of(double x, double y) const;
  Cells cells_under(const Facet& facet) const;
  template <class See>
  void for_each_cell(const Facet& facet, See see) const;

  std::vector<Facet> facets_;
  std::array<double, 2> low_ = {0, 0};
  double cell_mm_ = 1;
  std::array<std::size_t, 2> cells_ = {1, 1};
  std::vector<std::uint32_t> first_;  // of each cell's entries; one more at the end
  std::vector<Entry> entries_;        // in a cell the highest first
};

}  // namespace brimwright::geometry
