#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/triangle_mesh.h"

#include <optional>

namespace brimwright::geometry {

/// Cuts facets in two where a corner on another open edge lies on theirs, to within `reach_mm`, so
/// that the two edges of such a slit (a T-junction) become the same. For a welded mesh without
/// collapsed facets; nothing if there is no such corner.
///
/// Bound: drawing a facet's edge to a corner d away adds or takes a tetrahedron of a third of the
/// facet's area times d at most; for corners on three edges the facet's area times d is still
/// enough.
std::optional<Mend> split_seams(TriangleMesh& mesh, double reach_mm);

}  // namespace brimwright::geometry
