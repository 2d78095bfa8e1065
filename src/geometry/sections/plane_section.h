#pragma once

#include "geometry/sections/plane_cut.h"
#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <vector>

namespace brimwright::geometry {

/// A closed line of straight pieces; the last point joins the first.
using ClosedLine = std::vector<Point>;

/// Where a plane cuts a closed solid: the section's borders, with the solid on their left as seen
/// from above the plane; so outer borders run anticlockwise and those of holes clockwise.
///
/// Where the plane holds facets or edges of the solid, the section is the one just below it; that
/// of the flipped plane is the one just above. Exact but for the rounding of the cut edges' points.
/// For a closed, outward-facing solid (see checked_solid).
std::vector<ClosedLine> plane_section(const TriangleMesh& solid, const Plane& plane);

}  // namespace brimwright::geometry
