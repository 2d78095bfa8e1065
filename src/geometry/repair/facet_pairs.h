#pragma once

#include "geometry/repair/fours.h"
#include "geometry/surface/triangle_mesh.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Some facets of a mesh in a tree of upright boxes, to find those that may meet where they should
/// not.
///
/// Facets lie in the tree along a curve through space that keeps near what is near (G. M. Morton,
/// 1966), by fours, and so do the boxes round each four of them. Boxes are in single precision,
/// rounded outward.
class FacetPairs {
 public:
  /// `facets` are those to be paired. Two that share one of the vertices that `is_spread` marks
  /// meet nowhere else (corner_stars.h).
  FacetPairs(const TriangleMesh& mesh, std::vector<std::uint32_t> facets,
             const std::vector<char>& is_spread);

  /// Tasks that together see each pair once; they may be done at the same time.
  std::size_t tasks() const { return tasks_.size(); }
  /// Calls `see(a, b)` for each pair of facets of a task whose boxes meet or touch, but for those
  /// that surely meet nowhere but at what they share. Before, `count(pairs)` has been told of all
  /// whose boxes meet or touch, in any portions.
  template <class Count, class See>
  void for_each_pair(std::size_t task, Count count, See see) const;

 private:
  /// Four facets, beside their boxes.
  struct Leaf {
    FourCorners corners;  // a number of no vertex, and of no other facet, where it is not spread
    FourHalfSpaces spaces;
    Numbers facets;
  };
  /// Two nodes of one level, counted from the leaves up; the same one for what is in it.
  struct Nodes {
    std::uint32_t level, a, b;
  };

  void sort_along_curve(const TriangleMesh& mesh);
  void build_leaves(const TriangleMesh& mesh, const std::vector<char>& is_spread);
  void build_levels();
  void choose_tasks();
  /// Calls `see` with the pairs of nodes one level below; `nodes` are no leaves.
  template <class See>
  void for_each_below(const Nodes& nodes, See see) const;
  template <class Count, class See>
  void pair_leaves(std::uint32_t a, std::uint32_t b, Count& count, See& see) const;
  template <class Count, class See>
  void pair(const Nodes& nodes, Count& count, See& see) const;

  std::vector<std::uint32_t> facets_;           // along the curve
  std::vector<Leaf> leaves_;                    // fours of them
  std::vector<std::vector<FourBoxes>> levels_;  // of the facets, of fours of them, and so on to one
  std::vector<Nodes> tasks_;
};

template <class See>
void FacetPairs::for_each_below(const Nodes& nodes, See see) const {
  const std::vector<FourBoxes>& boxes = levels_[nodes.level];
  FourPairs pairs = meetings(boxes[nodes.a], boxes[nodes.b]);
  if (nodes.a == nodes.b) pairs &= fours::within_or_same;
  for (; pairs != 0; pairs &= pairs - 1) {
    const auto pair = static_cast<std::uint32_t>(std::countr_zero(pairs));
    see(Nodes{nodes.level - 1, 4 * nodes.a + pair % 4, 4 * nodes.b + pair / 4});
  }
}

template <class Count, class See>
void FacetPairs::pair_leaves(std::uint32_t a, std::uint32_t b, Count& count, See& see) const {
  // Here is most of the time spent.
  const FourBoxes &boxes_a = levels_[0][a], &boxes_b = levels_[0][b];
  FourPairs pairs = meetings(boxes_a, boxes_b);
  if (a == b) pairs &= fours::within_one;
  if (pairs == 0) return;
  count(fours::count_of(pairs));
  const Leaf &leaf_a = leaves_[a], &leaf_b = leaves_[b];
  pairs &= ~sharing(leaf_a.corners, leaf_b.corners);
  if (pairs == 0) return;
  for (std::size_t i = 0; i < 4; ++i)
    if ((pairs & fours::rows_of_one << i) != 0)
      pairs &= ~beyond(i, boxes_a, leaf_a.spaces, boxes_b, leaf_b.spaces);
  for (; pairs != 0; pairs &= pairs - 1) {
    const auto pair = static_cast<std::uint32_t>(std::countr_zero(pairs));
    see(leaf_a.facets[pair % 4], leaf_b.facets[pair / 4]);
  }
}

template <class Count, class See>
void FacetPairs::pair(const Nodes& nodes, Count& count, See& see) const {
  if (nodes.level == 0) return pair_leaves(nodes.a, nodes.b, count, see);
  for_each_below(nodes, [&](const Nodes& below) { pair(below, count, see); });
}

template <class Count, class See>
void FacetPairs::for_each_pair(std::size_t task, Count count, See see) const {
  pair(tasks_[task], count, see);
}

}  // namespace brimwright::geometry
