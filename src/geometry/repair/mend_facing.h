#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/triangle_mesh.h"

#include <optional>

namespace brimwright::geometry {

/// Turns facets so that each shell shows one side alone, the one that most of its facets showed
/// already. For a welded mesh without collapsed facets. Nothing if none had to be turned, or if a
/// shell has only one side (its edges tell: see surface_edges.h). Bound: none; no facet moves.
std::optional<Mend> face_alike(TriangleMesh& mesh);

}  // namespace brimwright::geometry
