#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace brimwright::geometry {

/// Which facet lies across each edge of each facet of a welded mesh.
///
/// Edge i of a facet goes from its corner i to the next. A half-edge is one facet's side of an
/// edge, written as 3 * facet + edge.
class FacetNeighbours {
 public:
  static constexpr std::uint32_t open = std::numeric_limits<std::uint32_t>::max();
  static constexpr std::uint32_t crowded = open - 1;

  /// No facet may have two corners in one vertex.
  explicit FacetNeighbours(const TriangleMesh& mesh);

  /// The one other half of that edge; `open` where there is none, `crowded` where there are more.
  std::uint32_t across(std::size_t facet, std::size_t edge) const {
    return across_[3 * facet + edge];
  }
  std::uint32_t across(std::size_t half) const { return across_[half]; }

  /// All half-edges at edges of more than two facets, edge by edge.
  std::vector<std::vector<std::uint32_t>> crowded_edges(const TriangleMesh& mesh) const;
  /// Makes two half-edges each other's, as if the rest of their edge were not there.
  void pair(std::uint32_t half, std::uint32_t other);

  /// The ends of all open edges, each once, in ascending order.
  std::vector<std::uint32_t> border_vertices(const TriangleMesh& mesh) const;

 private:
  std::vector<std::uint32_t> across_;
};

}  // namespace brimwright::geometry
