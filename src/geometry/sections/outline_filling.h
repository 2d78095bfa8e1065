#pragma once

#include "geometry/sections/plane_cut.h"

#include <array>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// Facets that fill the outlines of a cut and face upward from its plane: with `cut.below` they
/// make a closed solid.
///
/// A constrained Delaunay triangulation of the outlines, whose vertices it shares. Outlines that
/// cross each other by rounding are filled from their own middles instead, which adds a vertex for
/// each to the cut; the solid is closed and its volume exact either way.
std::vector<std::array<std::uint32_t, 3>> outline_filling(PlaneCut& cut, const Plane& plane);

}  // namespace brimwright::geometry
