#pragma once

#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// Where a surface meets itself other than along shared edges and corners.
struct SelfCrossing {
  std::size_t pairs = 0;  // of facets that meet
  Point first_mm{};       // where the first facet that meets another does so
  double deepest_mm = 0;  // how far corners would have to move, at most, to part the worst pair
  bool between_shells = false;  // some pair belongs to two different shells
  /// The pairs of different shells that meet, the lower number first, in order.
  std::vector<std::array<std::uint32_t, 2>> shells = {};
};

/// Decided for each pair of facets by CGAL's exact predicates; facets without area are passed over.
/// For a welded mesh with finite coordinates whose facets have three different corners. UserError
/// naming `file` where the facets lie so thick that the pairs are too many to try.
std::optional<SelfCrossing> self_crossing(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                          const std::string& file);

}  // namespace brimwright::geometry
