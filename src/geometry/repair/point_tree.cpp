#include "geometry/repair/point_tree.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr std::uint32_t leaf_size = 8;

/// Whether the stretch a to b comes into the box, widened by `reach` on all sides.
bool comes_into(const Vector& low, const Vector& high, const Vector& a, const Vector& b,
                double reach) {
  double enters = 0, leaves = 1;
  for (std::size_t i = 0; i < 3; ++i) {
    const double from = low[i] - reach, to = high[i] + reach;
    const double along = b[i] - a[i];
    if (along == 0) {
      if (a[i] < from || a[i] > to) return false;
      continue;
    }
    const auto [near, far] = std::minmax({(from - a[i]) / along, (to - a[i]) / along});
    enters = std::max(enters, near);
    leaves = std::min(leaves, far);
  }
  return enters <= leaves;
}

}  // namespace

PointTree::PointTree(std::vector<Vector> points)
    : points_(std::move(points)), order_(points_.size()) {
  std::iota(order_.begin(), order_.end(), 0U);
  if (!points_.empty()) add_node(0, static_cast<std::uint32_t>(points_.size()));
}

std::uint32_t PointTree::add_node(std::uint32_t first, std::uint32_t last) {
  Node node{points_[order_[first]], points_[order_[first]], first, last};
  for (std::uint32_t i = first; i < last; ++i) {
    for (std::size_t k = 0; k < 3; ++k) {
      node.low[k] = std::min(node.low[k], points_[order_[i]][k]);
      node.high[k] = std::max(node.high[k], points_[order_[i]][k]);
    }
  }
  const auto number = static_cast<std::uint32_t>(nodes_.size());
  nodes_.push_back(node);
  if (last - first <= leaf_size) return number;
  const Vector size = node.high - node.low;
  const auto axis =
      static_cast<std::size_t>(std::max_element(size.begin(), size.end()) - size.begin());
  const std::uint32_t middle = first + (last - first) / 2;
  std::nth_element(
      order_.begin() + first, order_.begin() + middle, order_.begin() + last,
      [&](std::uint32_t a, std::uint32_t b) { return points_[a][axis] < points_[b][axis]; });
  const std::uint32_t left = add_node(first, middle);
  const std::uint32_t right = add_node(middle, last);
  nodes_[number].left = left;
  nodes_[number].right = right;
  return number;
}

void PointTree::for_each_near(const Vector& a, const Vector& b, double reach,
                              const std::function<void(std::uint32_t)>& see) const {
  if (nodes_.empty()) return;
  std::vector<std::uint32_t> waiting = {0};
  while (!waiting.empty()) {
    const Node& node = nodes_[waiting.back()];
    waiting.pop_back();
    if (!comes_into(node.low, node.high, a, b, reach)) continue;
    if (node.right != 0) {
      waiting.push_back(node.right);
      waiting.push_back(node.left);
      continue;
    }
    for (std::uint32_t i = node.first; i < node.last; ++i)
      if (distance_mm(points_[order_[i]], a, b) <= reach) see(order_[i]);
  }
}

}  // namespace brimwright::geometry
