#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// How many edges have one kind of fault, and the middle of the first of them (by facet).
struct EdgeFault {
  std::size_t edges = 0;
  Point first_mm{};
};

/// How the facets of a welded mesh meet at their edges, and which hang together.
struct SurfaceEdges {
  EdgeFault open;     // one facet alone
  EdgeFault crowded;  // more than two facets
  EdgeFault turned;   // two facets, one showing its front where the other shows its back
  std::vector<std::uint32_t> shell;  // for each facet, the number of its shell
  std::uint32_t shells = 0;          // pieces of surface that hang together by edges of two facets
};

/// For a mesh whose equal vertices are one and whose facets have three different corners.
SurfaceEdges surface_edges(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
