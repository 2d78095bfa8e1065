#include "geometry/repair/facet_pairs.h"

#include "geometry/surface/enclosed_volume.h"

#include <cmath>
#include <limits>
#include <utility>

namespace brimwright::geometry {
namespace {

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

/// By place on the curve, digit by digit; equal places keep their order.
void sort(std::vector<Placed>& all) {
  std::vector<Placed> other(all.size());
  for (std::uint32_t digit = 0; digit < 3 * curve_bits; digit += digit_bits) {
    const auto digit_of = [&](Placed placed) {
      return placed >> (32 + digit) & ((std::size_t{1} << digit_bits) - 1);
    };
    std::array<std::size_t, (std::size_t{1} << digit_bits) + 1> first{};
    for (const Placed placed : all) ++first[digit_of(placed) + 1];
    for (std::size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
    for (const Placed placed : all) other[first[digit_of(placed)]++] = placed;
    all.swap(other);
  }
}

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

}  // namespace

FacetPairs::Box FacetPairs::united(const Box& a, const Box& b) {
  Box box = a;
  for (std::size_t i = 0; i < 3; ++i) {
    box.low[i] = std::min(a.low[i], b.low[i]);
    box.high[i] = std::max(a.high[i], b.high[i]);
  }
  return box;
}

FacetPairs::FacetPairs(const TriangleMesh& mesh, std::vector<std::uint32_t> facets)
    : facets_(std::move(facets)) {
  if (facets_.empty()) return;
  sort_along_curve(mesh);
  build_levels(mesh);
  choose_tasks();
}

void FacetPairs::sort_along_curve(const TriangleMesh& mesh) {
  static const auto table = spread_table();
  const auto [low, high] = bounding_box(mesh);
  const auto middle_of = [&](std::uint32_t facet) {  // three times it
    const auto& [a, b, c] = mesh.triangles[facet];
    Point sum{};
    for (const std::uint32_t v : {a, b, c})
      for (std::size_t i = 0; i < 3; ++i) sum[i] += mesh.vertices_mm[v][i];
    return sum;
  };
  constexpr double cells = 1 << curve_bits;
  Point scale{};
  for (std::size_t i = 0; i < 3; ++i) scale[i] = high[i] > low[i] ? cells / (high[i] - low[i]) : 0;
  std::vector<Placed> placed;
  placed.reserve(facets_.size());
  for (const std::uint32_t facet : facets_) {
    const Point middle = middle_of(facet);
    std::uint64_t place = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      const double cell = (middle[i] / 3 - low[i]) * scale[i];
      place |= table[static_cast<std::size_t>(std::clamp(cell, 0.0, cells - 1))] << i;
    }
    placed.push_back(place << 32 | facet);
  }
  sort(placed);
  for (std::size_t i = 0; i < placed.size(); ++i) facets_[i] = facet_of(placed[i]);
  // Where a cell of the curve holds many facets, their own places decide.
  for (std::size_t first = 0, end = 0; first < placed.size(); first = end) {
    while (end < placed.size() && placed[end] >> 32 == placed[first] >> 32) ++end;
    halve(facets_.data() + first, facets_.data() + end, 2 * leaf_size, middle_of);
  }
}

void FacetPairs::build_levels(const TriangleMesh& mesh) {
  boxes_.reserve(facets_.size());
  for (const std::uint32_t facet : facets_) {
    const auto& [a, b, c] = mesh.triangles[facet];
    const Point &p = mesh.vertices_mm[a], &q = mesh.vertices_mm[b], &r = mesh.vertices_mm[c];
    Box box{};
    for (std::size_t i = 0; i < 3; ++i) {
      box.low[i] = rounded_down(std::min({p[i], q[i], r[i]}));
      box.high[i] = rounded_up(std::max({p[i], q[i], r[i]}));
    }
    boxes_.push_back(box);
  }
  std::vector<Box> leaves;
  leaves.reserve(boxes_.size() / leaf_size + 1);
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    if (i % leaf_size == 0)
      leaves.push_back(boxes_[i]);
    else
      leaves.back() = united(leaves.back(), boxes_[i]);
  }
  levels_.push_back(std::move(leaves));
  while (levels_.back().size() > 1) {
    const std::vector<Box>& below = levels_.back();
    std::vector<Box> level;
    level.reserve(below.size() / 2 + 1);
    for (std::size_t i = 0; i < below.size(); i += 2)
      level.push_back(i + 1 < below.size() ? united(below[i], below[i + 1]) : below[i]);
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
