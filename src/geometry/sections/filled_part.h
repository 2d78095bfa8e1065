#pragma once

#include "geometry/sections/plane_cut.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

namespace brimwright::geometry {

// Parts of a closed, outward-facing solid (see checked_solid), closed again by flat caps. Exact but
// for the rounding of the cut edges' points: their volumes agree with the level curve to 1e-12 of
// the solid's. A part with nothing in it has no facets.

TriangleMesh part_below(const TriangleMesh& solid, const Plane& plane);
TriangleMesh part_above(const TriangleMesh& solid, const Plane& plane);

/// What fills `cavity` up to `depth` above its lowest point.
TriangleMesh filled_part(const TriangleMesh& cavity, Length depth);

/// The layer between two depths above the lowest point of `cavity`, `from` the lower.
TriangleMesh layer_between(const TriangleMesh& cavity, Length from, Length to);

}  // namespace brimwright::geometry
