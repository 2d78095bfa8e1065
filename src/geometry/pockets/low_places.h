#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <functional>

namespace brimwright::geometry {

// What most finished pieces and cavities show at a glance, before the tree of the air is built.
// Both answer yes only where the tree would say the same, and take one look at each facet.

/// Whether a closed, outward-facing body surely holds no liquid and shuts none in, turned in that
/// way or, without one, as it stands: none of its lowest places has air over it.
bool surely_holds_nothing(const TriangleMesh& body,
                          const std::function<Point(const Point&)>& turn = {});

/// Whether a closed, outward-facing solid, taken as what is filled, is surely one well, open
/// wherever it reaches its top, that keeps no air: it has one lowest place, and no part of its wall
/// leans over what is poured by more than half a degree.
bool is_surely_one_open_well(const TriangleMesh& solid);

}  // namespace brimwright::geometry
