#pragma once

#include "geometry/distance/oriented_box.h"
#include "geometry/surface/triangle_distance.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"

#include <array>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// The facets of a surface, halved again and again where they lie farthest apart; each part in a
/// box along its own lie, which is thin where the surface is nearly flat, and in an upright one.
struct SurfaceBoxes {
  struct Node {
    OrientedBox box;
    Vector low, high;                   // upright
    double size = 0;                    // half the box's diagonal
    std::uint32_t first, last;          // in facets
    std::uint32_t left = 0, right = 0;  // its halves; none for a leaf

    bool is_leaf() const { return right == 0; }
  };

  TriangleMesh solid;
  std::vector<std::array<Vector, 3>> facets;  // corners, leaf by leaf
  std::vector<Node> nodes;                    // the root first

  explicit SurfaceBoxes(const TriangleMesh& mesh);

  Facet facet(std::uint32_t i) const { return {facets[i][0], facets[i][1], facets[i][2]}; }
};

}  // namespace brimwright::geometry
