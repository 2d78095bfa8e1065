#include "geometry/distance/surface_tree.h"

#include "geometry/distance/surface_boxes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <queue>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Node = SurfaceBoxes::Node;

/// Where `second` lies as seen by `first`.
Placement seen_from(const Placement& first, const Placement& second) {
  Placement seen;
  const Vector between = second.move_mm - first.move_mm;
  for (std::size_t i = 0; i < 3; ++i) {
    const Vector axis = {first.turn[0][i], first.turn[1][i], first.turn[2][i]};
    for (std::size_t j = 0; j < 3; ++j)
      seen.turn[i][j] = dot(axis, {second.turn[0][j], second.turn[1][j], second.turn[2][j]});
    seen.move_mm[i] = dot(axis, between);
  }
  return seen;
}

/// A part of each surface.
struct NodePair {
  double at_least_mm;  // between the two
  std::uint32_t first, second;
  bool operator<(const NodePair& other) const { return at_least_mm > other.at_least_mm; }
};

/// Two trees in the frame of the first.
class Search {
 public:
  Search(const SurfaceBoxes& first, const SurfaceBoxes& second, const Placement& second_seen)
      : first_(first), second_(second), seen_(second_seen) {
    const auto reach = [](const Node& root) { return length(root.box.middle) + root.size; };
    const double largest =
        std::max(reach(first.nodes.front()), reach(second.nodes.front()) + length(seen_.move_mm));
    grain_mm_ = 1e-12 * largest;
  }

  /// What is no more than rounding; such surfaces meet.
  double grain_mm() const { return grain_mm_; }

  NodePair roots() const { return pair(0, 0); }
  bool is_leaf(const NodePair& at) const {
    return first_.nodes[at.first].is_leaf() && second_.nodes[at.second].is_leaf();
  }

  /// The halves of the larger against the other, the nearer first.
  std::array<NodePair, 2> halves(const NodePair& at) const {
    const Node &a = first_.nodes[at.first], &b = second_.nodes[at.second];
    std::array<NodePair, 2> halves{};
    if (b.is_leaf() || (!a.is_leaf() && a.size > b.size)) {
      const OrientedBox box = placed(b.box, seen_);
      halves = {NodePair{least_distance_mm(first_.nodes[a.left].box, box), a.left, at.second},
                NodePair{least_distance_mm(first_.nodes[a.right].box, box), a.right, at.second}};
    } else {
      halves = {pair(at.first, b.left), pair(at.first, b.right)};
    }
    if (halves[1].at_least_mm < halves[0].at_least_mm) std::swap(halves[0], halves[1]);
    return halves;
  }

  /// All facets of two leaves. `facet` is set to the second's where `nearest` comes from there.
  bool lower(const NodePair& at, NearestPair& nearest, std::uint32_t& facet) const {
    const Node &a = first_.nodes[at.first], &b = second_.nodes[at.second];
    bool lowered = false;
    for (std::uint32_t j = b.first; j < b.last; ++j) {
      const auto& corners = second_.facets[j];
      const Facet theirs(placed(corners[0], seen_), placed(corners[1], seen_),
                         placed(corners[2], seen_));
      for (std::uint32_t i = a.first; i < a.last; ++i) {
        if (!lower_to_distance(first_.facet(i), theirs, nearest)) continue;
        lowered = true;
        facet = j;
      }
    }
    return lowered;
  }

 private:
  NodePair pair(std::uint32_t a, std::uint32_t b) const {
    return {least_distance_mm(first_.nodes[a].box, placed(second_.nodes[b].box, seen_)), a, b};
  }

  const SurfaceBoxes& first_;
  const SurfaceBoxes& second_;
  Placement seen_;
  double grain_mm_ = 0;
};

struct NearestFacets {
  NearestPair points;
  std::uint32_t second_facet = 0;
};

/// Straight down to the leaves that look nearest: a first bound for the search.
NearestFacets first_guess(const Search& search) {
  NearestFacets nearest;
  NodePair at = search.roots();
  while (!search.is_leaf(at)) at = search.halves(at).front();
  search.lower(at, nearest.points, nearest.second_facet);
  return nearest;
}

/// Always the pair of parts next that could be nearest; none that could only be nearer by rounding,
/// or surfaces at one distance all over (a box in a box) would be gone through facet by facet.
NearestFacets nearest_facets(const Search& search) {
  NearestFacets nearest = first_guess(search);
  const auto is_too_far = [&](const NodePair& at) {
    return at.at_least_mm + search.grain_mm() >= nearest.points.distance_mm;
  };
  std::priority_queue<NodePair> waiting;
  waiting.push(search.roots());
  while (!waiting.empty()) {
    const NodePair at = waiting.top();
    waiting.pop();
    if (is_too_far(at)) break;
    if (search.is_leaf(at)) {
      search.lower(at, nearest.points, nearest.second_facet);
      continue;
    }
    for (const NodePair& half : search.halves(at))
      if (!is_too_far(half)) waiting.push(half);
  }
  return nearest;
}

Vector unit_normal(const std::array<Vector, 3>& facet, const Placement& placement) {
  const Vector area = doubled_area(facet[0], facet[1], facet[2]);
  const double size = length(area);
  const auto& [x, y, z] = placement.turn;
  const Vector turned = {dot(x, area), dot(y, area), dot(z, area)};
  return size > 0 ? turned * (1 / size) : turned;
}

}  // namespace

SurfaceTree::SurfaceTree(const TriangleMesh& solid)
    : boxes_(std::make_shared<const SurfaceBoxes>(solid)) {}

const TriangleMesh& SurfaceTree::solid() const { return boxes_->solid; }

Gap gap_between(const SurfaceTree& first, const Placement& first_at, const SurfaceTree& second,
                const Placement& second_at) {
  const Search search(*first.boxes_, *second.boxes_, seen_from(first_at, second_at));
  const auto [points, facet] = nearest_facets(search);
  const double width_mm = points.distance_mm <= search.grain_mm() ? 0 : points.distance_mm;
  return {.width = width_mm * millimetre,
          .on_first_mm = placed(points.on_first, first_at),
          .on_second_mm = placed(points.on_second, first_at),
          .second_normal = unit_normal(second.boxes_->facets[facet], second_at)};
}

bool is_gap_at_least(Length width, const SurfaceTree& first, const Placement& first_at,
                     const SurfaceTree& second, const Placement& second_at) {
  const double width_mm = width / millimetre;
  if (width_mm <= 0) return true;
  const Search search(*first.boxes_, *second.boxes_, seen_from(first_at, second_at));
  NearestPair nearest{.distance_mm = std::max(width_mm, search.grain_mm())};
  std::uint32_t facet = 0;
  std::vector<NodePair> waiting = {search.roots()};
  while (!waiting.empty()) {
    const NodePair at = waiting.back();
    waiting.pop_back();
    if (at.at_least_mm - search.grain_mm() >= width_mm) continue;
    if (search.is_leaf(at)) {
      if (search.lower(at, nearest, facet)) return false;
      continue;
    }
    const auto [nearer, farther] = search.halves(at);
    waiting.push_back(farther);
    waiting.push_back(nearer);
  }
  return true;
}

}  // namespace brimwright::geometry
