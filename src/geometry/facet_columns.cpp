#include "geometry/facet_columns.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

/// Twice the area of a, b and the point, seen from above. The same number but for its sign whether
/// asked for a to b or b to a, so that neighbours agree on the side of their edge.
double turn(const Vector& a, const Vector& b, const Vector& p) {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}
struct EdgeSide {
  double turn;
  bool left;  // of the edge from a to b
};
EdgeSide side_of(const Vector& a, const Vector& b, const Vector& p) {
  if (a[0] < b[0] || (a[0] == b[0] && a[1] < b[1])) {
    const double t = turn(a, b, p);
    return {t, t >= 0};
  }
  const double t = turn(b, a, p);
  return {-t, t < 0};
}

double highest_of(const FacetColumns::Facet& f) { return std::max({f[0][2], f[1][2], f[2][2]}); }
double lowest_of(const FacetColumns::Facet& f) { return std::min({f[0][2], f[1][2], f[2][2]}); }

/// 1 where a plumb line meets the facet's upper side above the point, -1 for the lower, else 0.
int met_above(const FacetColumns::Facet& f, const Vector& p) {
  const EdgeSide ab = side_of(f[0], f[1], p), bc = side_of(f[1], f[2], p);
  if (ab.left != bc.left) return 0;
  const EdgeSide ca = side_of(f[2], f[0], p);
  if (ca.left != ab.left) return 0;
  const double whole = ab.turn + bc.turn + ca.turn;
  const double height = whole == 0
                            ? highest_of(f)
                            : (bc.turn * f[0][2] + ca.turn * f[1][2] + ab.turn * f[2][2]) / whole;
  if (std::clamp(height, lowest_of(f), highest_of(f)) <= p[2]) return 0;
  return ab.left ? 1 : -1;
}

}  // namespace

FacetColumns::FacetColumns(std::vector<Facet> facets) : facets_(std::move(facets)) {
  lay_grid();
  first_.assign(cells_[0] * cells_[1] + 1, 0);
  for (const Facet& f : facets_) for_each_cell(f, [&](std::size_t cell) { ++first_[cell + 1]; });
  for (std::size_t cell = 0; cell + 1 < first_.size(); ++cell) first_[cell + 1] += first_[cell];
  entries_.resize(first_.back());
  std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
  for (std::uint32_t i = 0; i < facets_.size(); ++i) {
    const Entry entry = {.highest = highest_of(facets_[i]), .facet = i};
    for_each_cell(facets_[i], [&](std::size_t cell) { entries_[next[cell]++] = entry; });
  }
  for (std::size_t cell = 0; cell + 1 < first_.size(); ++cell) {
    std::sort(entries_.begin() + first_[cell], entries_.begin() + first_[cell + 1],
              [](const Entry& a, const Entry& b) { return a.highest > b.highest; });
  }
}

/// Cells smaller than the facets, by as much as was quickest on trial; larger where facets differ
/// so much in size that some would fall into very many.
void FacetColumns::lay_grid() {
  constexpr double least_mm = 1e-3, of_mean = 0.4, most_along = 1000;
  std::array<double, 2> high{};
  double edges = 0;
  if (!facets_.empty()) low_ = high = {facets_[0][0][0], facets_[0][0][1]};
  for (const Facet& f : facets_) {
    for (std::size_t axis = 0; axis < 2; ++axis) {
      low_[axis] = std::min({low_[axis], f[0][axis], f[1][axis], f[2][axis]});
      high[axis] = std::max({high[axis], f[0][axis], f[1][axis], f[2][axis]});
    }
    edges += length(f[1] - f[0]);
  }
  const double count = std::max<double>(1, static_cast<double>(facets_.size()));
  const double widest = std::max(high[0] - low_[0], high[1] - low_[1]);
  cell_mm_ = std::max({of_mean * edges / count, widest / most_along, least_mm});
  const std::size_t most_entries = 32 * facets_.size() + 1'000'000;
  for (;; cell_mm_ *= 2) {
    for (std::size_t axis = 0; axis < 2; ++axis)
      cells_[axis] = static_cast<std::size_t>((high[axis] - low_[axis]) / cell_mm_) + 1;
    std::size_t entries = 0;
    for (const Facet& f : facets_) entries += cells_under(f).count();
    if (entries <= most_entries) return;
  }
}

std::array<std::size_t, 2> FacetColumns::cell_of(double x, double y) const {
  const auto along = [&](double offset, std::size_t cells) {
    return static_cast<std::size_t>(
        std::clamp(offset / cell_mm_, 0.0, static_cast<double>(cells - 1)));
  };
  return {along(x - low_[0], cells_[0]), along(y - low_[1], cells_[1])};
}

FacetColumns::Cells FacetColumns::cells_under(const Facet& f) const {
  const auto [x_low, x_high] = std::minmax({f[0][0], f[1][0], f[2][0]});
  const auto [y_low, y_high] = std::minmax({f[0][1], f[1][1], f[2][1]});
  return {.low = cell_of(x_low, y_low), .high = cell_of(x_high, y_high)};
}

template <class See>
void FacetColumns::for_each_cell(const Facet& facet, See see) const {
  const auto [low, high] = cells_under(facet);
  for (std::size_t y = low[1]; y <= high[1]; ++y)
    for (std::size_t x = low[0]; x <= high[0]; ++x) see(y * cells_[0] + x);
}

FacetColumns::Above FacetColumns::above(const Vector& point) const {
  const auto [x, y] = cell_of(point[0], point[1]);
  const std::size_t cell = y * cells_[0] + x;
  Above above;
  for (std::uint32_t i = first_[cell]; i < first_[cell + 1]; ++i) {
    if (entries_[i].highest <= point[2]) break;
    const int met = met_above(facets_[entries_[i].facet], point);
    above.winding += met;
    above.any = above.any || met != 0;
  }
  return above;
}

}  // namespace brimwright::geometry
