#include "geometry/level_sums.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brimwright::geometry {
namespace {

constexpr double third = 1.0 / 3;
constexpr std::size_t cells_for_each_depth = 4;
/// Double sums over so many facets, or over so many for each depth, round by a few 1e-15; they are
/// added up in long double.
constexpr std::size_t facets_to_settle = 16'384;
constexpr std::size_t facets_to_settle_for_each_depth = 64;

template <class Term>
void add_to(Term& term, double column, double area) {
  term.column += column;
  term.area += area;
}

template <class Sums, class Parts>
void move_into(Sums& sums, Parts& parts) {
  for (std::size_t k = 0; k < sums.size(); ++k) {
    add_to(sums[k], parts[k].column, parts[k].area);
    parts[k] = {};
  }
}

}  // namespace

LevelSums::LevelSums(const std::vector<Length>& depths, double height)
    : height_(height), wanted_(depths) {
  for (const Length depth : depths) depths_.push_back(std::clamp(depth / millimetre, 0.0, height));
  std::sort(depths_.begin(), depths_.end());
  const std::size_t cells = cells_for_each_depth * depths_.size();
  if (!depths_.empty() && depths_.back() > 0) {
    cells_per_mm_ = static_cast<double>(cells) / depths_.back();
  }
  first_.resize(cells + 1);
  last_cell_ = static_cast<double>(cells);
  std::uint32_t k = 0;
  for (std::size_t cell = 0; cell <= cells; ++cell) {
    while (k < depths_.size() && cell_of(depths_[k]) < cell) ++k;
    first_[cell] = k;
  }
  depths_.push_back(std::numeric_limits<double>::infinity());
  recent_.resize(depths_.size());
  settled_.resize(depths_.size());
}

std::size_t LevelSums::cell_of(double height) const {
  // Any monotone rule does: a depth in a lower cell lies lower. What is not a number comes last.
  const double cell = height * cells_per_mm_;
  const double within = cell < last_cell_ ? cell : last_cell_;
  return static_cast<std::size_t>(static_cast<std::int32_t>(within > 0 ? within : 0));
}

void LevelSums::add(const FacetColumns& columns, std::size_t count) {
  const double* const depths = depths_.data();
  for (std::size_t i = 0; i < count; ++i) {
    const double z1 = columns.z1[i];
    std::size_t k = first_[cell_of(z1)];
    while (depths[k] < z1) ++k;
    if (depths[k] < columns.z3[i]) add_crossing(columns, i, k);
    const double area = columns.area[i];
    add_to(recent_.ending[k], area * columns.mean[i], area);
    if (z1 >= height_) lid_ += area;
  }
  recent_facets_ += count;
  const std::size_t enough = facets_to_settle_for_each_depth * depths_.size();
  if (recent_facets_ >= std::max(facets_to_settle, enough)) settle();
}

/// Adds to the depths from the `k`th on that the facet crosses; leaves the next one's number in k.
inline void LevelSums::add_crossing(const FacetColumns& columns, std::size_t i, std::size_t& k) {
  const double* const depths = depths_.data();
  auto* const crossing = recent_.crossing.data();
  const double z1 = columns.z1[i], z2 = columns.z2[i], z3 = columns.z3[i];
  const double area = columns.area[i], upper = columns.upper[i];
  for (; depths[k] < z2; ++k) {
    const double t = depths[k] - z1;
    const double below = t * t * columns.lower[i];  // the part of the facet below the plane
    add_to(crossing[k], below * t * third, below);
  }
  const double p = z2 - z1, q = z3 - z1;
  for (; depths[k] < z3; ++k) {
    const double t = depths[k] - z1, s = z3 - depths[k];
    const double above = s * s * upper;
    // t - (p + q) / 3 + s^3 / [3 q (q - p)] loses its digits near the bottom of a facet that stands
    // on an edge; multiplied out, with s = q - t, it does not. Near p = q it is the other way
    // round.
    const double column = p < q / 2
                              ? upper * (q * (t * (t - p) + p * p * third) - t * t * t * third)
                              : area * (depths[k] - columns.mean[i]) + above * s * third;
    add_to(crossing[k], column, area - above);
  }
}

void LevelSums::settle() {
  move_into(settled_.crossing, recent_.crossing);
  move_into(settled_.ending, recent_.ending);
  recent_facets_ = 0;
}

LevelRow LevelSums::row(Length depth, const std::vector<Term<long double>>& ended,
                        bool inside_out) const {
  const double h = std::clamp(depth / millimetre, 0.0, height_);
  const auto k = static_cast<std::size_t>(std::lower_bound(depths_.begin(), depths_.end(), h) -
                                          depths_.begin());
  const auto& crossing = settled_.crossing[k];
  long double volume = -(ended[k].area * h - ended[k].column + crossing.column);
  long double surface = -(ended[k].area + crossing.area);
  if (h >= height_) surface += lid_;
  if (inside_out) {
    volume = -volume;
    surface = -surface;
  }
  return {.depth = depth,
          .volume = std::max(0.0, static_cast<double>(volume)) * cubic_millimetre,
          .surface = std::max(0.0, static_cast<double>(surface)) * square_millimetre};
}

LevelSums::Outcome LevelSums::outcome() {
  settle();
  std::vector<Term<long double>> ended = settled_.ending;
  for (std::size_t k = 1; k < ended.size(); ++k) {
    ended[k].column += ended[k - 1].column;
    ended[k].area += ended[k - 1].area;
  }
  const auto& all = ended.back();
  Outcome outcome{.rows = {},
                  .inside_out = all.column - all.area * height_ < 0,
                  .finite = std::isfinite(all.column) && std::isfinite(all.area)};
  outcome.rows.reserve(wanted_.size());
  for (const Length depth : wanted_) {
    outcome.rows.push_back(row(depth, ended, outcome.inside_out));
  }
  return outcome;
}

}  // namespace brimwright::geometry
