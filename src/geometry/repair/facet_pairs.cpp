#include "geometry/repair/facet_pairs.h"

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/large_pages.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/vectors.h"

#include <cassert>
#include <cmath>
#include <limits>
#include <span>
#include <utility>

namespace brimwright::geometry {
namespace {

using Corners = std::array<std::uint32_t, 3>;

constexpr std::uint32_t curve_bits = 10;  // for each axis
constexpr std::size_t many_tasks = 256;   // so that no processor waits long for the last one
constexpr std::uint32_t digit_bits = 10;

/// A facet with its place on the curve in the upper half.
using Placed = std::uint64_t;
std::uint32_t facet_of(Placed placed) { return static_cast<std::uint32_t>(placed); }

/// The bits of `x`, two apart.
std::uint64_t spread(std::uint32_t x) {
  std::uint64_t bits = 0;
  for (std::uint32_t i = 0; i < curve_bits; ++i) bits |= std::uint64_t{x >> i & 1} << 3 * i;
  return bits;
}

std::array<std::uint64_t, std::size_t{1} << curve_bits> spread_table() {
  std::array<std::uint64_t, std::size_t{1} << curve_bits> table{};
  for (std::uint32_t x = 0; x < table.size(); ++x) table[x] = spread(x);
  return table;
}

/// By place on the curve; equal places keep their order. In parts that begin alike, then each part
/// digit by digit.
class CurveSort {
 public:
  explicit CurveSort(std::vector<Placed>& all) : all_(all) {}

  void sort() {
    constexpr std::size_t few = std::size_t{1} << 14;  // not worth other threads' while
    if (all_.size() <= few) return std::sort(all_.begin(), all_.end());
    part();
    in_parallel(digits, [this](std::size_t part) {
      sort_part(std::span(parted_).subspan(first_[part], first_[part + 1] - first_[part]),
                all_.data() + first_[part]);
    });
  }

 private:
  static constexpr std::size_t digits = std::size_t{1} << digit_bits;
  static constexpr std::uint32_t top_digit = 3 * curve_bits - digit_bits;
  using Counts = std::array<std::size_t, digits>;

  static std::size_t digit_of(Placed placed, std::uint32_t digit) {
    return placed >> (32 + digit) & (digits - 1);
  }

  void part() {
    reserve_large(parted_, all_.size());
    parted_.resize(all_.size());
    constexpr std::size_t stretches = 16;
    const auto begin_of = [&](std::size_t stretch) { return all_.size() * stretch / stretches; };
    std::vector<Counts> next(stretches, Counts{});
    in_parallel(stretches, [&](std::size_t stretch) {
      for (std::size_t i = begin_of(stretch); i < begin_of(stretch + 1); ++i)
        ++next[stretch][digit_of(all_[i], top_digit)];
    });
    std::size_t at = 0;
    for (std::size_t digit = 0; digit < digits; ++digit) {
      first_[digit] = at;
      for (Counts& counts : next) at += std::exchange(counts[digit], at);
    }
    first_[digits] = at;
    in_parallel(stretches, [&](std::size_t stretch) {
      for (std::size_t i = begin_of(stretch); i < begin_of(stretch + 1); ++i)
        parted_[next[stretch][digit_of(all_[i], top_digit)]++] = all_[i];
    });
  }

  /// Writes it to `sorted`.
  static void sort_part(std::span<Placed> part, Placed* sorted) {
    constexpr std::size_t few = 256;  // fewer are sorted faster by comparing
    if (part.size() < few) {
      std::copy(part.begin(), part.end(), sorted);
      return std::sort(sorted, sorted + part.size());  // facets ascend within a place
    }
    std::vector<Placed> by_last(part.size());
    sort_digit(0, part, by_last.data());
    sort_digit(digit_bits, by_last, sorted);
  }
  static void sort_digit(std::uint32_t digit, std::span<const Placed> from, Placed* to) {
    std::array<std::size_t, digits + 1> next{};
    for (const Placed placed : from) ++next[digit_of(placed, digit) + 1];
    for (std::size_t i = 1; i < next.size(); ++i) next[i] += next[i - 1];
    for (const Placed placed : from) to[next[digit_of(placed, digit)]++] = placed;
  }

  std::vector<Placed>& all_;
  std::vector<Placed> parted_;
  std::array<std::size_t, digits + 1> first_{};  // of each part
};

float rounded_down(double x) {
  const auto near = static_cast<float>(x);
  return double{near} <= x ? near : std::nextafter(near, -std::numeric_limits<float>::infinity());
}
float rounded_up(double x) {
  const auto near = static_cast<float>(x);
  return double{near} >= x ? near : std::nextafter(near, std::numeric_limits<float>::infinity());
}

/// Halves facets by the axis along which they lie farthest apart until few are left together.
template <class MiddleOf>
void halve(std::uint32_t* first, std::uint32_t* last, std::size_t few, MiddleOf middle_of) {
  while (static_cast<std::size_t>(last - first) > few) {
    Point low = middle_of(*first), high = low;
    for (const std::uint32_t* facet = first; facet != last; ++facet) {
      const Point middle = middle_of(*facet);
      for (std::size_t i = 0; i < 3; ++i) {
        low[i] = std::min(low[i], middle[i]);
        high[i] = std::max(high[i], middle[i]);
      }
    }
    std::size_t axis = 0;
    for (std::size_t i = 1; i < 3; ++i)
      if (high[i] - low[i] > high[axis] - low[axis]) axis = i;
    std::uint32_t* const half = first + (last - first) / 2;
    std::nth_element(first, half, last, [&](std::uint32_t a, std::uint32_t b) {
      return middle_of(a)[axis] < middle_of(b)[axis];
    });
    halve(first, half, few, middle_of);
    first = half;
  }
}

/// Half of a facet's box is not the facet, or more: a half-space with its longest side on the
/// border cuts that off, seen along the axis in which the facet is thinnest.
struct HalfSpace {
  std::array<float, 3> outward{};
  float reach = std::numeric_limits<float>::infinity();
};

/// `farthest`: no coordinate of the mesh is larger. Without branches, which nobody could foretell.
HalfSpace half_space_round(const std::array<Point, 3>& corners, const Point& size,
                           const Point& farthest) {
  constexpr std::array<std::size_t, 5> round = {0, 1, 2, 0, 1};
  std::size_t along = size[1] < size[0] ? 1 : 0;
  along = size[2] < size[along] ? 2 : along;
  const std::size_t x = round[along + 1], y = round[along + 2];
  std::array<double, 3> side_x{}, side_y{}, length{};
  for (std::size_t i = 0; i < 3; ++i) {
    const Point &from = corners[i], &to = corners[round[i + 1]];
    side_x[i] = to[x] - from[x];
    side_y[i] = to[y] - from[y];
    length[i] = side_x[i] * side_x[i] + side_y[i] * side_y[i];
  }
  std::size_t longest = length[1] > length[0] ? 1 : 0;
  longest = length[2] > length[longest] ? 2 : longest;
  const double front = std::copysign(1.0, side_x[0] * side_y[1] - side_y[0] * side_x[1]);
  const double scale = front / std::max(std::abs(side_x[longest]), std::abs(side_y[longest]));
  HalfSpace space;
  space.outward[x] = static_cast<float>(side_y[longest] * scale);
  space.outward[y] = static_cast<float>(-side_x[longest] * scale);
  const double out_x = space.outward[x], out_y = space.outward[y];
  // A box's reach is reckoned in single precision, three roundings of 6e-8 of its largest term.
  constexpr double rounding = 5e-7, least = 1e-37;
  const double doubt =
      rounding * (std::abs(out_x) * farthest[x] + std::abs(out_y) * farthest[y]) + least;
  const auto reach_of = [&](const Point& p) { return out_x * p[x] + out_y * p[y]; };
  const double reach =
      std::max(std::max(reach_of(corners[0]), reach_of(corners[1])), reach_of(corners[2])) + doubt;
  // Not a number where the facet is seen as a point: then nothing is cut off.
  if (reach < std::numeric_limits<float>::max()) space.reach = rounded_up(reach);
  return space;
}

/// The box round all four.
void set_round(const FourBoxes& four, FourBoxes& boxes, std::size_t i) {
  for (std::size_t k = 0; k < 3; ++k) {
    boxes.low[k][i] = *std::min_element(four.low[k].begin(), four.low[k].end());
    boxes.high[k][i] = *std::max_element(four.high[k].begin(), four.high[k].end());
  }
}

Point farthest_of(const TriangleMesh& mesh) {
  const auto [low, high] = bounding_box(mesh);
  Point farthest{};
  for (std::size_t i = 0; i < 3; ++i) farthest[i] = std::max(std::abs(low[i]), std::abs(high[i]));
  return farthest;
}

}  // namespace

FacetPairs::FacetPairs(const TriangleMesh& mesh, std::vector<std::uint32_t> facets,
                       const std::vector<char>& is_spread)
    : facets_(std::move(facets)) {
  if (facets_.empty()) return;
  sort_along_curve(mesh);
  build_leaves(mesh, is_spread);
  facets_ = {};
  build_levels();
  choose_tasks();
}

void FacetPairs::sort_along_curve(const TriangleMesh& mesh) {
  static const auto table = spread_table();
  const auto [low, high] = bounding_box(mesh);
  const auto middle_of = [triangles = mesh.triangles.data(),
                          vertices = mesh.vertices_mm.data()](std::uint32_t facet) {
    const auto& [a, b, c] = triangles[facet];
    return vertices[a] + vertices[b] + vertices[c];  // three times it
  };
  constexpr double cells = 1 << curve_bits;
  Point scale{};
  for (std::size_t i = 0; i < 3; ++i) scale[i] = high[i] > low[i] ? cells / (high[i] - low[i]) : 0;
  std::vector<Placed> placed;
  reserve_large(placed, facets_.size());
  placed.resize(facets_.size());
  in_stretches(
      facets_.size(), [&, facets = facets_.data(), placed_at = placed.data()](std::size_t at) {
        const std::uint32_t facet = facets[at];
        const Point middle = middle_of(facet);
        std::uint64_t place = 0;
        for (std::size_t i = 0; i < 3; ++i) {
          const double cell = (middle[i] / 3 - low[i]) * scale[i];
          place |= table[static_cast<std::size_t>(std::max(0.0, std::min(cell, cells - 1)))] << i;
        }
        placed_at[at] = place << 32 | facet;
      });
  CurveSort(placed).sort();
  for (std::size_t i = 0; i < placed.size(); ++i) facets_[i] = facet_of(placed[i]);
  // Where a cell of the curve holds many facets, their own places decide.
  constexpr std::size_t few = 8;
  for (std::size_t first = 0, end = 0; first < placed.size(); first = end) {
    while (end < placed.size() && placed[end] >> 32 == placed[first] >> 32) ++end;
    halve(facets_.data() + first, facets_.data() + end, few, middle_of);
  }
}

void FacetPairs::build_leaves(const TriangleMesh& mesh, const std::vector<char>& is_spread) {
  // Numbers that are no vertex's, from the highest down.
  assert(mesh.vertices_mm.size() + 3 * mesh.triangles.size() < ~std::uint32_t{0});
  const Point farthest = farthest_of(mesh);
  const std::size_t size = (facets_.size() + 3) / 4;
  reserve_large(leaves_, size);
  leaves_.resize(size);
  reserve_large(levels_.emplace_back(), size);
  levels_.back().resize(size);
  const Corners* const triangles = mesh.triangles.data();
  const Point* const vertices = mesh.vertices_mm.data();
  in_stretches(facets_.size(), [&, facets = facets_.data(), all = facets_.size(),
                                leaves = leaves_.data(), boxes_of = levels_.front().data(),
                                spread = is_spread.data()](std::size_t at) {
    constexpr std::size_t ahead = 8;  // what the curve brings next is not next in memory
    if (at + 2 * ahead < all) {
      __builtin_prefetch(&triangles[facets[at + 2 * ahead]]);
      for (const std::uint32_t v : triangles[facets[at + ahead]]) __builtin_prefetch(&vertices[v]);
    }
    const Corners& corners = triangles[facets[at]];
    const std::array<Point, 3> places = {vertices[corners[0]], vertices[corners[1]],
                                         vertices[corners[2]]};
    Leaf& leaf = leaves[at / 4];
    FourBoxes& boxes = boxes_of[at / 4];
    const std::size_t n = at % 4;
    leaf.facets[n] = facets[at];
    Point size_mm{};
    for (std::size_t i = 0; i < 3; ++i) {
      leaf.corners[i][n] =
          spread[corners[i]] != 0 ? corners[i] : ~static_cast<std::uint32_t>(3 * at + i);
      const double low = std::min(std::min(places[0][i], places[1][i]), places[2][i]);
      const double high = std::max(std::max(places[0][i], places[1][i]), places[2][i]);
      boxes.low[i][n] = rounded_down(low);
      boxes.high[i][n] = rounded_up(high);
      size_mm[i] = high - low;
    }
    const HalfSpace space = half_space_round(places, size_mm, farthest);
    leaf.spaces.reach[n] = space.reach;
    for (std::size_t i = 0; i < 3; ++i) leaf.spaces.outward[i][n] = space.outward[i];
  });
}

void FacetPairs::build_levels() {
  while (levels_.back().size() > 1) {
    const std::vector<FourBoxes>& below = levels_.back();
    std::vector<FourBoxes> level((below.size() + 3) / 4);
    for (std::size_t i = 0; i < below.size(); ++i) set_round(below[i], level[i / 4], i % 4);
    levels_.push_back(std::move(level));
  }
}

void FacetPairs::choose_tasks() {
  tasks_ = {{static_cast<std::uint32_t>(levels_.size() - 1), 0, 0}};
  while (tasks_.size() < many_tasks && tasks_.front().level > 0) {
    std::vector<Nodes> finer;
    for (const Nodes& nodes : tasks_)
      for_each_below(nodes, [&](const Nodes& below) { finer.push_back(below); });
    tasks_ = std::move(finer);
  }
}

}  // namespace brimwright::geometry
