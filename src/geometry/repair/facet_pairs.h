#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Some facets of a mesh in a tree of upright boxes, to find those whose boxes meet.
///
/// Facets lie in the tree along a curve through space that keeps near what is near (G. M. Morton,
/// 1966); four make a leaf. Boxes are in single precision, rounded outward.
class FacetPairs {
 public:
  /// `facets` are those to be paired.
  FacetPairs(const TriangleMesh& mesh, std::vector<std::uint32_t> facets);

  /// Tasks that together see each pair once; they may be done at the same time.
  std::size_t tasks() const { return tasks_.size(); }
  /// Calls `see(a, b)` for each pair of facets of a task whose boxes meet or touch.
  template <class See>
  void for_each_pair(std::size_t task, See see) const;

 private:
  static constexpr std::size_t leaf_size = 4;
  struct Box {
    std::array<float, 3> low, high;
    bool meets(const Box& other) const {
      return low[0] <= other.high[0] && other.low[0] <= high[0] && low[1] <= other.high[1] &&
             other.low[1] <= high[1] && low[2] <= other.high[2] && other.low[2] <= high[2];
    }
  };
  /// Two nodes of one level, counted from the leaves up; the same one for what is in it.
  struct Nodes {
    std::uint32_t level, a, b;
  };
  static Box united(const Box& a, const Box& b);

  void sort_along_curve(const TriangleMesh& mesh);
  void build_levels(const TriangleMesh& mesh);
  void choose_tasks();
  /// Calls `see` with the pairs of nodes one level below; `meet` has no leaves.
  template <class See>
  void for_each_below(const Nodes& nodes, See see) const;
  template <class See>
  void pair_leaves(std::uint32_t a, std::uint32_t b, See see) const;

  std::vector<std::uint32_t> facets_;     // along the curve
  std::vector<Box> boxes_;                // of each of them
  std::vector<std::vector<Box>> levels_;  // of the leaves, of pairs of them, and so on to one
  std::vector<Nodes> tasks_;
};

template <class See>
void FacetPairs::for_each_below(const Nodes& nodes, See see) const {
  const std::uint32_t level = nodes.level - 1;
  const Box* const boxes = levels_[level].data();
  const auto size = static_cast<std::uint32_t>(levels_[level].size());
  const std::uint32_t end_a = std::min(size, 2 * nodes.a + 2),
                      end_b = std::min(size, 2 * nodes.b + 2);
  for (std::uint32_t a = 2 * nodes.a; a < end_a; ++a) {
    if (nodes.a == nodes.b) see(Nodes{level, a, a});
    for (std::uint32_t b = nodes.a == nodes.b ? a + 1 : 2 * nodes.b; b < end_b; ++b)
      if (boxes[a].meets(boxes[b])) see(Nodes{level, a, b});
  }
}

template <class See>
void FacetPairs::pair_leaves(std::uint32_t a, std::uint32_t b, See see) const {
  // Plain pointers: here is most of the time spent.
  const Box* const boxes = boxes_.data();
  const std::uint32_t* const facets = facets_.data();
  const std::size_t end_a = std::min(facets_.size(), leaf_size * (std::size_t{a} + 1));
  const std::size_t end_b = std::min(facets_.size(), leaf_size * (std::size_t{b} + 1));
  const Box around_b = levels_[0][b];
  for (std::size_t i = leaf_size * a; i < end_a; ++i) {
    const Box box = boxes[i];
    if (a != b && !box.meets(around_b)) continue;
    for (std::size_t j = a == b ? i + 1 : leaf_size * b; j < end_b; ++j)
      if (box.meets(boxes[j])) see(facets[i], facets[j]);
  }
}

template <class See>
void FacetPairs::for_each_pair(std::size_t task, See see) const {
  std::vector<Nodes> waiting = {tasks_[task]};
  while (!waiting.empty()) {
    const Nodes nodes = waiting.back();
    waiting.pop_back();
    if (nodes.level == 0)
      pair_leaves(nodes.a, nodes.b, see);
    else
      for_each_below(nodes, [&](const Nodes& below) { waiting.push_back(below); });
  }
}

}  // namespace brimwright::geometry
