#pragma once

#include "geometry/exact/solid_union.h"

#include <vector>

namespace brimwright::helpers {

/// The union of closed, outward-facing solids that may overlap or touch, by CGAL's corefinement
/// with exact numbers; corners where surfaces cross are rounded to the nearest double at the end.
/// It goes on for ever where some solids touch each other along an edge.
geometry::SolidUnion united(const std::vector<geometry::TriangleMesh>& solids);

}  // namespace brimwright::helpers
