#include "geometry/exposure/facets_above.h"

#include "geometry/surface/mesh_error.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace brimwright::geometry {
namespace {

/// An edge seen from above, kept the same way round for both facets that meet in it, so that they
/// agree on the side of it that a point is on, to the last bit.
class Edge {
 public:
  Edge(const Vector& a, const Vector& b) : is_turned_(!comes_first(a, b)) {
    const Vector &from = is_turned_ ? b : a, &to = is_turned_ ? a : b;
    x_ = from[0];
    y_ = from[1];
    along_x_ = to[0] - x_;
    along_y_ = to[1] - y_;
  }

  struct Side {
    double turn;  // twice the area of the edge and the point
    bool left;    // of the edge from a to b
  };
  Side side_of(const Vector& p) const {
    const double t = along_x_ * (p[1] - y_) - along_y_ * (p[0] - x_);
    return is_turned_ ? Side{-t, t < 0} : Side{t, t >= 0};
  }

 private:
  static bool comes_first(const Vector& a, const Vector& b) {
    return a[0] < b[0] || (a[0] == b[0] && a[1] < b[1]);
  }

  bool is_turned_;
  double x_, y_, along_x_, along_y_;
};

/// A facet made ready to be met by many plumb lines.
class Roof {
 public:
  explicit Roof(const FacetCorners& f)
      : ab_(f[0], f[1]),
        bc_(f[1], f[2]),
        ca_(f[2], f[0]),
        heights_{f[0][2], f[1][2], f[2][2]},
        lowest_(std::min({f[0][2], f[1][2], f[2][2]})),
        highest_(std::max({f[0][2], f[1][2], f[2][2]})) {}

  double highest() const { return highest_; }

  /// 1 where a plumb line meets the facet's upper side above the point, -1 for the lower, else 0.
  int met_above(const Vector& p) const {
    if (highest_ <= p[2]) return 0;
    const auto ab = ab_.side_of(p), bc = bc_.side_of(p), ca = ca_.side_of(p);
    if (ab.left != bc.left || ca.left != ab.left) return 0;
    const double whole = ab.turn + bc.turn + ca.turn;
    const auto& [a, b, c] = heights_;
    const double height = whole == 0 ? highest_ : (bc.turn * a + ca.turn * b + ab.turn * c) / whole;
    if (std::clamp(height, lowest_, highest_) <= p[2]) return 0;
    return ab.left ? 1 : -1;
  }

 private:
  Edge ab_, bc_, ca_;
  Point heights_;
  double lowest_, highest_;
};

struct Range {
  double low = std::numeric_limits<double>::infinity();
  double high = -std::numeric_limits<double>::infinity();
  void take(double x) {
    low = std::min(low, x);
    high = std::max(high, x);
  }
  double width() const { return std::max(0.0, high - low); }
};

Range extent(const FacetCorners& f, std::size_t axis) {
  Range range;
  for (const Vector& corner : f) range.take(corner[axis]);
  return range;
}

/// The facet's extent along x between two lines along x; empty where it does not come between.
Range extent_between(const FacetCorners& f, const Range& lines) {
  Range range;
  for (std::size_t i = 0; i < 3; ++i) {
    const Vector &a = f[i], &b = f[(i + 1) % 3];
    if (std::max(a[1], b[1]) < lines.low || std::min(a[1], b[1]) > lines.high) continue;
    const double rise = b[1] - a[1];
    for (const Vector& end : {a, b}) {
      const double within = std::clamp(end[1], lines.low, lines.high);
      range.take(rise == 0 ? end[0] : a[0] + (within - a[1]) / rise * (b[0] - a[0]));
    }
  }
  return range;
}

/// Points sorted by squares seen from above, row after row.
class PointGrid {
 public:
  struct Point {
    Vector at;
    std::uint32_t number;
  };

  explicit PointGrid(const std::vector<Vector>& points) {
    lay_grid(points);
    first_.assign(across_ * rows_ + 1, 0);
    for (const Vector& p : points) ++first_[cell_of(p) + 1];
    for (std::size_t cell = 1; cell < first_.size(); ++cell) first_[cell] += first_[cell - 1];
    sorted_.resize(points.size());
    auto next = first_;
    for (std::uint32_t i = 0; i < points.size(); ++i)
      sorted_[next[cell_of(points[i])]++] = {points[i], i};
  }

  double lowest() const { return lowest_; }

  /// Every point under the facet, and some beside it; tells how many.
  template <class See>
  std::size_t for_each_under(const FacetCorners& facet, See see) const {
    const Range x = extent(facet, 0), y = extent(facet, 1);
    if (x.high < x_.low || x.low > x_.high || y.high < y_.low || y.low > y_.high) return 0;
    std::size_t seen = 0;
    const std::size_t last = row_of(y.high);
    for (std::size_t row = row_of(y.low); row <= last; ++row) {
      const Range reach = extent_between(facet, lines_of(row));
      if (reach.high < reach.low) continue;
      // A hair more, for what rounding takes away.
      const std::size_t from = row * across_ + column_of(reach.low - hair());
      const std::size_t to = row * across_ + column_of(reach.high + hair());
      for (std::size_t i = first_[from]; i < first_[to + 1]; ++i) see(sorted_[i]);
      seen += first_[to + 1] - first_[from];
    }
    return seen;
  }

 private:
  /// Some points to a square: seen one after the other, they cost less than many squares.
  void lay_grid(const std::vector<Vector>& points) {
    constexpr double points_to_a_cell = 4, least_mm = 1e-3;
    for (const Vector& p : points) {
      x_.take(p[0]);
      y_.take(p[1]);
      lowest_ = std::min(lowest_, p[2]);
    }
    const double cells = static_cast<double>(points.size()) / points_to_a_cell + 1;
    // The second keeps a long thin row of points to as many squares.
    cell_mm_ = std::max({std::sqrt(x_.width() * y_.width() / cells),
                         std::max(x_.width(), y_.width()) / cells, least_mm});
    across_ = static_cast<std::size_t>(x_.width() / cell_mm_) + 1;
    rows_ = static_cast<std::size_t>(y_.width() / cell_mm_) + 1;
  }

  static std::size_t along(double offset, std::size_t cells) {
    return static_cast<std::size_t>(std::clamp(offset, 0.0, static_cast<double>(cells - 1)));
  }
  std::size_t column_of(double x) const { return along((x - x_.low) / cell_mm_, across_); }
  std::size_t row_of(double y) const { return along((y - y_.low) / cell_mm_, rows_); }
  std::size_t cell_of(const Vector& p) const { return row_of(p[1]) * across_ + column_of(p[0]); }
  double hair() const { return 1e-6 * cell_mm_; }
  Range lines_of(std::size_t row) const {
    const double low = y_.low + static_cast<double>(row) * cell_mm_;
    return {.low = low - hair(), .high = low + cell_mm_ + hair()};
  }

  Range x_, y_;
  double lowest_ = std::numeric_limits<double>::infinity();
  double cell_mm_ = 1;
  std::size_t across_ = 1, rows_ = 1;
  std::vector<std::uint32_t> first_;  // of each square's points in sorted_; one more at the end
  std::vector<Point> sorted_;
};

}  // namespace

std::vector<Above> facets_above(const std::vector<Vector>& points,
                                const std::vector<FacetCorners>& facets) {
  std::vector<Above> above(points.size());
  const PointGrid grid(points);
  std::size_t left = 2'000'000'000;  // our own bound: some seconds
  for (const FacetCorners& facet : facets) {
    const Roof roof(facet);
    if (roof.highest() <= grid.lowest()) continue;
    const std::size_t seen = grid.for_each_under(facet, [&](const PointGrid::Point& point) {
      const int met = roof.met_above(point.at);
      if (met == 0) return;
      above[point.number].winding += met;
      above[point.number].any = true;
    });
    if (seen > left) throw TooManyLayers();
    left -= seen;
  }
  return above;
}

}  // namespace brimwright::geometry
