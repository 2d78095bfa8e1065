#pragma once

#include "geometry/surface/vectors.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

namespace brimwright::geometry {

/// Points sorted by place, halving them again and again along the longest side of their box.
class PointTree {
 public:
  explicit PointTree(std::vector<Vector> points);

  /// Calls `see` with the number of each point at most `reach` away from the stretch a to b.
  void for_each_near(const Vector& a, const Vector& b, double reach,
                     const std::function<void(std::uint32_t)>& see) const;

 private:
  struct Node {
    Vector low, high;
    std::uint32_t first, last;          // in order_
    std::uint32_t left = 0, right = 0;  // its halves; none for a leaf
  };

  std::uint32_t add_node(std::uint32_t first, std::uint32_t last);

  std::vector<Vector> points_;
  std::vector<std::uint32_t> order_;
  std::vector<Node> nodes_;
};

}  // namespace brimwright::geometry
