#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <cstddef>

namespace brimwright::geometry {

/// Makes one vertex of all whose coordinates are the same to the last bit (-0 counts as 0), and
/// leaves away vertices that no facet uses. Facets keep their order.
TriangleMesh welded(const TriangleMesh& mesh);

/// Leaves away vertices that no facet uses.
void drop_unused_vertices(TriangleMesh& mesh);

/// Leaves away facets with two corners in one vertex; returns how many. They have no area, and the
/// two facets beside one meet where it was, so a closed surface stays closed.
std::size_t drop_collapsed_facets(TriangleMesh& mesh);

}  // namespace brimwright::geometry
