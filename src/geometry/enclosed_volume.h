#pragma once

#include "geometry/triangle_mesh.h"
#include "units/quantity.h"

namespace brimwright::geometry {

/// Volume enclosed by a closed surface whose facets face outward, by the divergence theorem with
/// the origin moved to the surface; negative when the facets face inward. Meaningless for an open
/// surface: see checked_solid.
Volume enclosed_volume(const TriangleMesh& solid);

/// The axis-parallel box round all vertices: lowest and highest x, y, z in millimetres.
struct Box {
  std::array<double, 3> low_mm;
  std::array<double, 3> high_mm;
};
Box bounding_box(const TriangleMesh& mesh);  ///< std::logic_error if it is empty: box_if_any.h

}  // namespace brimwright::geometry
