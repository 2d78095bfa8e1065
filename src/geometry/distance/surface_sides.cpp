// On which side of a surface a point lies, and how far from it.

#include "geometry/distance/surface_boxes.h"
#include "geometry/distance/surface_tree.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Node = SurfaceBoxes::Node;
using Corners = std::array<Vector, 3>;

bool is_left_of(const Vector& low, const Vector& high, const Vector& point) {
  return CGAL::orientation(Kernel::Point_2(low[0], low[1]), Kernel::Point_2(high[0], high[1]),
                           Kernel::Point_2(point[0], point[1])) == CGAL::LEFT_TURN;
}

/// Seen from above: 1 if the facet lies over or under the point anticlockwise, -1 if clockwise, 0
/// if beside it. An edge runs from its lower y up to without its upper, and has only what is truly
/// left of it on its left; so each point is over or under exactly one of the facets at an edge or
/// a corner, and never of one seen from its edge.
int turns_round(const Corners& facet, const Vector& point) {
  int turns = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    const Vector &from = facet[i], &to = facet[(i + 1) % 3];
    if (from[1] <= point[1] && point[1] < to[1]) turns += is_left_of(from, to, point);
    if (to[1] <= point[1] && point[1] < from[1]) turns -= is_left_of(to, from, point);
  }
  return turns;
}

Kernel::Point_3 exact(const Vector& p) { return {p[0], p[1], p[2]}; }

/// What the facet adds to the winding number of the point, found by a plumb line upward.
int winding_above(const Corners& facet, const Vector& point) {
  const int turns = turns_round(facet, point);
  if (turns == 0) return 0;
  const auto side =
      CGAL::orientation(exact(facet[0]), exact(facet[1]), exact(facet[2]), exact(point));
  return turns * static_cast<int>(side) < 0 ? turns : 0;
}

bool can_be_above(const Node& node, const Vector& point) {
  return node.low[0] <= point[0] && point[0] <= node.high[0] && node.low[1] <= point[1] &&
         point[1] <= node.high[1] && point[2] <= node.high[2];
}

}  // namespace

bool SurfaceTree::contains(const Vector& point_mm) const {
  int winding = 0;
  std::vector<std::uint32_t> waiting = {0};
  while (!waiting.empty()) {
    const Node& node = boxes_->nodes[waiting.back()];
    waiting.pop_back();
    if (!can_be_above(node, point_mm)) continue;
    if (!node.is_leaf()) {
      waiting.push_back(node.left);
      waiting.push_back(node.right);
      continue;
    }
    for (std::uint32_t i = node.first; i < node.last; ++i)
      winding += winding_above(boxes_->facets[i], point_mm);
  }
  return winding > 0;
}

double SurfaceTree::signed_distance_mm(const Vector& point_mm) const {
  using Waiting = std::pair<double, std::uint32_t>;  // no nearer than, node
  const auto waiting_at = [&](std::uint32_t node) {
    return Waiting(distance_mm(point_mm, boxes_->nodes[node].box), node);
  };
  NearestPair nearest;
  std::vector<Waiting> waiting = {waiting_at(0)};
  while (!waiting.empty()) {
    const auto [at_least, number] = waiting.back();
    waiting.pop_back();
    if (at_least >= nearest.distance_mm) continue;
    const Node& node = boxes_->nodes[number];
    if (node.is_leaf()) {
      for (std::uint32_t i = node.first; i < node.last; ++i)
        lower_to_distance(point_mm, boxes_->facet(i), nearest);
      continue;
    }
    Waiting nearer = waiting_at(node.left), farther = waiting_at(node.right);
    if (farther.first < nearer.first) std::swap(nearer, farther);
    waiting.push_back(farther);
    waiting.push_back(nearer);
  }
  return contains(point_mm) ? -nearest.distance_mm : nearest.distance_mm;
}

}  // namespace brimwright::geometry
