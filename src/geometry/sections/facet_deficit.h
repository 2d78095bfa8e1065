#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/share.h"

namespace brimwright::geometry {

/// How much more a smooth wall would hold than the flat facets that stand for it, as a share of the
/// section at mid height; zero for walls that are meant flat. For an n-gon in place of a circle
/// this is its deficit, 1 - (n / 2 pi) sin(2 pi / n), to second order.
Share facet_deficit(const TriangleMesh& cavity);

}  // namespace brimwright::geometry
