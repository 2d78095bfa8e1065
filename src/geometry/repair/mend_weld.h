#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/triangle_mesh.h"

#include <optional>

namespace brimwright::geometry {

/// Joins corners on open edges that lie at most `reach_mm` apart, in the middle of each cluster.
///
/// A cluster is what lies within reach of its first corner, so that corners set closely along a rim
/// do not draw each other in one after the other. Corners inside the surface stay where they are.
/// Facets that collapse are left away; the mesh must be welded and without collapsed facets.
/// Nothing if no two corners are near enough.
///
/// Bound: a facet whose corners move by at most d sweeps at most its area times d (the larger of
/// its areas before and after), as each of its points moves by a mean of its corners' moves.
std::optional<Mend> join_near_corners(TriangleMesh& mesh, double reach_mm);

}  // namespace brimwright::geometry
