#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/triangle_mesh.h"

#include <optional>
#include <vector>

namespace brimwright::geometry {

// Facets that a surface is better off without. Each function takes a welded mesh and says what it
// left away, or nothing.

/// Facets with two corners in one vertex. Bound: none, for they enclose nothing and their
/// neighbours meet without them.
std::optional<Mend> drop_collapsed(TriangleMesh& mesh);

/// What is there more than once: of facets with the same corners, those facing the same way are one
/// facet. A front and a back on the same corners enclose nothing and both go, unless the whole mesh
/// consists of such pairs, as some programs write it; then one of each stays. Bound: none.
std::optional<Mend> drop_duplicates(TriangleMesh& mesh);

/// Facets with three corners in line to within `flat_mm`, which stand in slits; split_seams closes
/// what they leave. Bound: their area times their height.
std::optional<Mend> drop_flat(TriangleMesh& mesh, double flat_mm);

/// Loose bits of open surface: shells with open edges that have less than 0.1 % of the surface, all
/// together no more than 1 %. Bound: their area times their own width, as if each had been the lid
/// of a dent as deep as it is wide.
std::optional<Mend> drop_scraps(TriangleMesh& mesh);

}  // namespace brimwright::geometry
