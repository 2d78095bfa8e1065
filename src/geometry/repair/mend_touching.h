#pragma once

#include "geometry/surface/triangle_mesh.h"

namespace brimwright::geometry {

/// The surface with what touches at edges and corners taken apart: each fan of facets round a
/// vertex gets a vertex of its own.
///
/// At an edge of more than two facets those are taken for neighbours that have material between
/// them, as solids that touch along the edge have; where solids overlap, those that hang together
/// elsewhere. For a welded mesh whose facets show one side. Edges that cannot be paired that way
/// come out open.
TriangleMesh touching_apart(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
