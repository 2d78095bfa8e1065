#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <vector>

namespace brimwright::geometry {

/// The surface of solids that overlap, as the air sees it.
struct ExposedSurface {
  std::vector<Area> area;    // of each part: outside all other parts and outside its own overlaps
  std::vector<Area> upward;  // of that: what faces up (normal above the horizontal)
  std::vector<Area> from_above;  // of each part: what is seen looking straight down, as projected
};

/// `parts` are closed and outward-facing, and may overlap themselves and each other; only what lies
/// above `floor_mm` counts. Judged facet by facet, large ones split to `facet_mm` (at least 0.01,
/// std::logic_error; coarser where there would be over 300 thousand pieces more than twice the
/// facets): by how many times the parts wind round a point just outside the facet. Good to about a
/// facet's width along the lines where parts meet. A hollow that is closed all round counts too, as
/// do both of two surfaces that lie on each other and face the same way.
ExposedSurface exposed_surface(const std::vector<TriangleMesh>& parts, double floor_mm,
                               double facet_mm = 1.0);

}  // namespace brimwright::geometry
