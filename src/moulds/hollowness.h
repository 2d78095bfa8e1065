#pragma once

#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <cstddef>
#include <optional>

namespace brimwright::moulds {

/// Handles of a closed surface: 0 for a ball, 1 for a ring or a tube. By Euler's formula, over all
/// shells; where surfaces touch at a corner, each touch counts as one more. `solid` is welded and
/// has no vertices to spare.
std::size_t holes_through(const geometry::TriangleMesh& solid, const geometry::SurfaceEdges& edges);

/// How far one separate solid is from being convex.
struct Hollowness {
  double fill = 1;         // its share of the least convex solid round it
  Length deepest = {};     // how far its surface lies below that, seen at points of each facet
  double depth_share = 0;  // that, of its least extent along the axes
};

/// `part` is one solid, closed and facing outward (parts_of). The depth is never over-read; a dent
/// as narrow as a twelfth of the part may be under-read.
Hollowness hollowness_of(const geometry::TriangleMesh& part);

/// Between what hollowness_of would say, in a fraction of its time.
struct HollownessBounds {
  double fill_at_least = 0, fill_at_most = 1;
  Length deepest_at_most = {};
  double depth_share_at_most = 0;
};
/// Nothing where they cannot be told.
std::optional<HollownessBounds> hollowness_bounds(const geometry::TriangleMesh& part);

}  // namespace brimwright::moulds
