#include "geometry/levels/level_sums.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr double third = 1.0 / 3;
constexpr std::size_t cells_for_each_depth = 4;
/// Double sums over so many facets, or over so many for each depth, round by a few 1e-15; they are
/// added up in long double.
constexpr std::size_t facets_to_settle = 16'384;
constexpr std::size_t facets_to_settle_for_each_depth = 64;

/// A facet that crosses so many depths is worth looking up where it ends.
constexpr std::size_t tall = 8;

template <class Term>
void add_to(Term& term, double column, double area) {
  term.column += column;
  term.area += area;
}

/// The column below a depth and its slope, in one stretch of a facet's heights.
struct Part {
  double column, slope;
};

/// Adds to depths that follow each other; the compiler takes several at a time.
template <class PartAt>
void add_parts(const double* __restrict depths, double* __restrict columns,
               double* __restrict slopes, std::size_t count, PartAt part_at) {
  for (std::size_t k = 0; k < count; ++k) {
    const Part part = part_at(depths[k]);
    columns[k] += part.column;
    slopes[k] += part.slope;
  }
}

}  // namespace

void FacetColumns::set(std::size_t i, double low, double middle, double high, double own_area) {
  z1[i] = low;
  z2[i] = middle;
  z3[i] = high;
  area[i] = own_area;
  mean[i] = (low + middle + high) * third;
  lower[i] = own_area / ((middle - low) * (high - low));
  upper[i] = own_area / ((high - middle) * (high - low));
}

LevelSums::LevelSums(const std::vector<double>& depths) : wanted_(depths), depths_(depths) {
  std::sort(depths_.begin(), depths_.end());
  const std::size_t cells = cells_for_each_depth * depths_.size();
  if (!depths_.empty() && depths_.back() > 0)
    cells_per_mm_ = static_cast<double>(cells) / depths_.back();
  first_.resize(cells + 1);
  last_cell_ = static_cast<double>(cells);
  std::uint32_t k = 0;
  for (std::size_t cell = 0; cell <= cells; ++cell) {
    while (k < depths_.size() && cell_of(depths_[k]) < cell) ++k;
    first_[cell] = k;
  }
  depths_.insert(depths_.end(), tall + 1, std::numeric_limits<double>::infinity());
  recent_columns_.resize(depths_.size());
  recent_slopes_.resize(depths_.size());
  recent_ends_.resize(depths_.size());
  crossing_.resize(depths_.size());
  ending_.resize(depths_.size());
}

std::size_t LevelSums::cell_of(double height) const {
  // Any monotone rule does: a depth in a lower cell lies lower. What is not a number comes last.
  const double cell = height * cells_per_mm_;
  const double within = cell < last_cell_ ? cell : last_cell_;
  return static_cast<std::size_t>(static_cast<std::int32_t>(within > 0 ? within : 0));
}

std::size_t LevelSums::depth_at_or_above(double height) const {
  std::size_t k = first_[cell_of(height)];
  while (depths_[k] < height) ++k;
  return k;
}

/// Adds to the depths from the `k`th on that a facet crosses; returns the next one's number.
inline std::size_t LevelSums::add_crossing(const FacetColumns& columns, std::size_t i,
                                           std::size_t k) {
  const double z1 = columns.z1[i], z2 = columns.z2[i], z3 = columns.z3[i];
  const double area = columns.area[i], mean = columns.mean[i];
  const double lower = columns.lower[i], upper = columns.upper[i];
  const double p = z2 - z1, q = z3 - z1;
  const double* const depths = depths_.data();
  double* const columns_at = recent_columns_.data();
  double* const slopes_at = recent_slopes_.data();
  const bool is_tall = depths[k + tall] < z3;
  const auto add_up_to = [&](double height, auto part_at) {
    if (is_tall) {
      const std::size_t end = std::max(k, depth_at_or_above(height));
      add_parts(depths + k, columns_at + k, slopes_at + k, end - k, part_at);
      k = end;
    }
    for (; depths[k] < height; ++k) {
      const Part part = part_at(depths[k]);
      columns_at[k] += part.column;
      slopes_at[k] += part.slope;
    }
  };
  add_up_to(z2, [=](double h) {
    const double below = (h - z1) * (h - z1) * lower;  // the part of the facet below the plane
    return Part{below * (h - z1) * third, below};
  });
  // h - mean z + (z3-h)^3 / [3 (z3-z1)(z3-z2)] loses its digits near the bottom of a facet that
  // stands on an edge; multiplied out, it does not. Near z2 = z3 it is the other way round.
  if (p < q / 2) {
    add_up_to(z3, [=](double h) {
      const double t = h - z1, above = (z3 - h) * (z3 - h) * upper;
      return Part{upper * (q * (t * (t - p) + p * p * third) - t * t * t * third), area - above};
    });
  } else {
    add_up_to(z3, [=](double h) {
      const double above = (z3 - h) * (z3 - h) * upper;
      return Part{area * (h - mean) + above * (z3 - h) * third, area - above};
    });
  }
  return k;
}

void LevelSums::add(const FacetColumns& columns, std::size_t count) {
  for (std::size_t i = 0; i < count; ++i) {
    const double z1 = columns.z1[i], area = columns.area[i];
    std::size_t k = depth_at_or_above(z1);
    // An upright facet bounds no column of liquid.
    if (depths_[k] < columns.z3[i] && area != 0) k = add_crossing(columns, i, k);
    add_to(recent_ends_[k], area * columns.mean[i], area);
  }
  recent_facets_ += count;
  const std::size_t enough = facets_to_settle_for_each_depth * depths_.size();
  if (recent_facets_ >= std::max(facets_to_settle, enough)) settle();
}

void LevelSums::settle() {
  for (std::size_t k = 0; k < depths_.size(); ++k) {
    add_to(crossing_[k], std::exchange(recent_columns_[k], 0), std::exchange(recent_slopes_[k], 0));
    add_to(ending_[k], recent_ends_[k].column, recent_ends_[k].area);
    recent_ends_[k] = {};
  }
  recent_facets_ = 0;
}

std::vector<Level> LevelSums::levels() {
  settle();
  std::vector<Term<long double>> ended = ending_;
  for (std::size_t k = 1; k < ended.size(); ++k) {
    ended[k].column += ended[k - 1].column;
    ended[k].area += ended[k - 1].area;
  }
  std::vector<Level> levels;
  for (const double h : wanted_) {
    const auto k = static_cast<std::size_t>(std::lower_bound(depths_.begin(), depths_.end(), h) -
                                            depths_.begin());
    const long double volume = -(ended[k].area * h - ended[k].column + crossing_[k].column);
    const long double surface = -(ended[k].area + crossing_[k].area);
    levels.push_back(
        {std::max(0.0, static_cast<double>(volume)), std::max(0.0, static_cast<double>(surface))});
  }
  return levels;
}

}  // namespace brimwright::geometry
