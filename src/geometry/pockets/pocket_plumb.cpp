#include "geometry/pockets/pocket_plumb.h"

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <vector>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
/// Twice the area of a, b, c seen from above; its sign is exact.
CGAL::Orientation turn(const Point& a, const Point& b, const Point& c) {
  return CGAL::orientation(Kernel::Point_2(a[0], a[1]), Kernel::Point_2(b[0], b[1]),
                           Kernel::Point_2(c[0], c[1]));
}

Kernel::Point_3 exact(const Point& p) { return {p[0], p[1], p[2]}; }

/// A facet that faces up, with its box.
struct Tread {
  Point low, high;
  std::uint32_t facet;
};

}  // namespace

/// A tread among those of a cell, which lie in the order of their lowest points. What lies under a
/// point is looked for from there downwards, and no further than `highest` says.
struct Shelf {
  double low;
  double highest;  // point of this one and all before it
  std::uint32_t facet;
};

/// Treads in square grids seen from above, each in the finest grid whose cells are no smaller than
/// it is, so that it lies in four cells at most and a plumb line passes one cell of each grid.
struct PlumbLine::Impl {
  explicit Impl(const AirSurface& air) : surface(air), box(bounding_box(air.mesh())) {
    side = std::max({box.high_mm[0] - box.low_mm[0], box.high_mm[1] - box.low_mm[1], 1e-300});
    std::vector<std::uint32_t> all;  // facets: their boxes are sooner reckoned again than kept
    const auto& facets = air.mesh().triangles;
    for (std::uint32_t facet = 0; facet < facets.size(); ++facet)
      if (is_tread(facet)) all.push_back(facet);
    while (std::size_t{1} << (2 * finest) < all.size()) ++finest;
    first.assign(grid_start(finest + 1) + 1, 0);
    for (const std::uint32_t facet : all) {
      const Tread t = tread_of(facet);
      for_each_cell(t, [&](std::size_t cell) { ++first[cell + 1]; });
      lowest = std::min(lowest, t.low[2]);
    }
    for (std::size_t cell = 1; cell < first.size(); ++cell) first[cell] += first[cell - 1];
    treads.resize(first.back());
    std::vector<std::uint32_t> next(first.begin(), first.end() - 1);
    for (const std::uint32_t facet : all) {
      const Tread t = tread_of(facet);
      for_each_cell(t, [&](std::size_t cell) {
        treads[next[cell]++] = {t.low[2], t.high[2], t.facet};
      });
    }
    for (std::size_t cell = 0; cell + 1 < first.size(); ++cell) put_in_order(cell);
  }

  void put_in_order(std::size_t cell) {
    const auto shelves = std::span(treads).subspan(first[cell], first[cell + 1] - first[cell]);
    std::sort(shelves.begin(), shelves.end(), [](const Shelf& a, const Shelf& b) {
      return a.low != b.low ? a.low < b.low : a.facet < b.facet;
    });
    for (std::size_t i = 1; i < shelves.size(); ++i)
      shelves[i].highest = std::max(shelves[i].highest, shelves[i - 1].highest);
  }

  bool is_tread(std::uint32_t facet) const {
    const auto& mesh = surface.mesh();
    const auto& [a, b, c] = mesh.triangles[facet];
    return turn(mesh.vertices_mm[a], mesh.vertices_mm[b], mesh.vertices_mm[c]) == CGAL::POSITIVE;
  }

  Tread tread_of(std::uint32_t facet) const {
    const auto& mesh = surface.mesh();
    const auto& [a, b, c] = mesh.triangles[facet];
    const Point &p = mesh.vertices_mm[a], &q = mesh.vertices_mm[b], &r = mesh.vertices_mm[c];
    Tread tread{p, p, facet};
    for (std::size_t axis = 0; axis < 3; ++axis) {
      tread.low[axis] = std::min({p[axis], q[axis], r[axis]});
      tread.high[axis] = std::max({p[axis], q[axis], r[axis]});
    }
    return tread;
  }

  /// Cells of all coarser grids: 1 + 4 + 16 + ...
  static std::size_t grid_start(std::size_t grid) {
    return ((std::size_t{1} << (2 * grid)) - 1) / 3;
  }

  std::size_t column(double place, double low, std::size_t grid) const {
    const auto cells = static_cast<double>(std::size_t{1} << grid);
    const double cell = (place - low) / side * cells;  // monotone, also as rounded
    return static_cast<std::size_t>(std::clamp(cell, 0.0, cells - 1));
  }

  std::size_t cell_of(double x, double y, std::size_t grid) const {
    return grid_start(grid) + (column(y, box.low_mm[1], grid) << grid) +
           column(x, box.low_mm[0], grid);
  }

  template <class See>
  void for_each_cell(const Tread& t, See see) const {
    const double size = std::max(t.high[0] - t.low[0], t.high[1] - t.low[1]);
    std::size_t grid = 0;
    while (grid < finest && size * static_cast<double>(std::size_t{2} << grid) <= side) ++grid;
    for (std::size_t row = column(t.low[1], box.low_mm[1], grid);
         row <= column(t.high[1], box.low_mm[1], grid); ++row) {
      for (std::size_t col = column(t.low[0], box.low_mm[0], grid);
           col <= column(t.high[0], box.low_mm[0], grid); ++col) {
        see(grid_start(grid) + (row << grid) + col);
      }
    }
  }

  /// The tread's height under `p`, if the plumb line from `p` meets it.
  std::optional<double> height_under(const Point& p, std::uint32_t facet) const {
    const auto& mesh = surface.mesh();
    const auto& [ia, ib, ic] = mesh.triangles[facet];
    const Point &a = mesh.vertices_mm[ia], &b = mesh.vertices_mm[ib], &c = mesh.vertices_mm[ic];
    const auto [low, high] = std::minmax({a[2], b[2], c[2]});
    if (low > p[2]) return std::nullopt;
    for (std::size_t axis = 0; axis < 2; ++axis) {
      if (p[axis] < std::min({a[axis], b[axis], c[axis]})) return std::nullopt;
      if (p[axis] > std::max({a[axis], b[axis], c[axis]})) return std::nullopt;
    }
    if (turn(a, b, p) == CGAL::NEGATIVE || turn(b, c, p) == CGAL::NEGATIVE ||
        turn(c, a, p) == CGAL::NEGATIVE) {
      return std::nullopt;
    }
    // a, b, c turn left seen from above: a point above their plane is on its positive side.
    if (high > p[2] &&
        CGAL::orientation(exact(a), exact(b), exact(c), exact(p)) == CGAL::NEGATIVE) {
      return std::nullopt;
    }
    return std::clamp(height_of_plane(a, b, c, p), low, std::min(high, p[2]));
  }

  static double height_of_plane(const Point& a, const Point& b, const Point& c, const Point& p) {
    const double ux = b[0] - a[0], uy = b[1] - a[1], vx = c[0] - a[0], vy = c[1] - a[1];
    const double px = p[0] - a[0], py = p[1] - a[1];
    const double area = ux * vy - vx * uy;
    if (!(area > 0)) return a[2];  // a sliver too thin for doubles: any of its heights
    return a[2] +
           ((px * vy - vx * py) * (b[2] - a[2]) + (ux * py - px * uy) * (c[2] - a[2])) / area;
  }

  bool touches(std::uint32_t facet, std::uint32_t vertex) const {
    const auto has = [&](std::uint32_t f) {
      const auto& [a, b, c] = surface.mesh().triangles[f];
      return a == vertex || b == vertex || c == vertex;
    };
    const std::uint32_t back = surface.back_of(facet);
    return has(facet) || (back != AirSurface::none && has(back));
  }

  const AirSurface& surface;
  Box box;
  double side = 1;
  std::size_t finest = 0;
  double lowest = HUGE_VAL;
  std::vector<std::uint32_t> first;
  std::vector<Shelf> treads;  // cell after cell
};

PlumbLine::PlumbLine(const AirSurface& surface) : impl_(std::make_unique<const Impl>(surface)) {}
PlumbLine::PlumbLine(PlumbLine&&) noexcept = default;
PlumbLine::~PlumbLine() = default;

std::optional<std::uint32_t> PlumbLine::facet_below(std::uint32_t vertex) {
  const Point& p = impl_->surface.mesh().vertices_mm[vertex];
  constexpr std::size_t most_looked_at = 100'000'000;  // our own bound: some seconds
  std::optional<std::uint32_t> highest;
  if (p[2] < impl_->lowest) return highest;
  double height = -HUGE_VAL;
  for (std::size_t grid = 0; grid <= impl_->finest; ++grid) {
    const std::size_t cell = impl_->cell_of(p[0], p[1], grid);
    const auto begin = impl_->treads.begin() + impl_->first[cell];
    auto shelf = std::upper_bound(begin, impl_->treads.begin() + impl_->first[cell + 1], p[2],
                                  [](double z, const Shelf& other) { return z < other.low; });
    while (shelf != begin && (--shelf)->highest > height) {
      if (++looked_at_ > most_looked_at) throw TooManyLayers();
      const std::uint32_t facet = shelf->facet;
      const auto here = impl_->height_under(p, facet);
      if (!here || *here <= height || impl_->touches(facet, vertex)) continue;
      height = *here;
      highest = facet;
    }
  }
  return highest;
}

}  // namespace brimwright::geometry
