#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "moulds/shape.h"

namespace brimwright::moulds {

/// The cavity of `shape` as a closed mesh with about `round_facets` facets round a circle: for
/// pictures, for writing, and as a second way to the volume.
geometry::TriangleMesh solid_of(const Shape& shape, int round_facets);

}  // namespace brimwright::moulds
