#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <optional>

namespace brimwright::geometry {

/// Volume enclosed by a closed surface whose facets face outward, by the divergence theorem with
/// the origin moved to the surface; negative when the facets face inward. Meaningless for an open
/// surface: see checked_solid.
Volume enclosed_volume(const TriangleMesh& solid);

/// The axis-parallel box round all vertices: lowest and highest x, y, z in millimetres.
struct Box {
  Point low_mm;
  Point high_mm;
};
Box bounding_box(const TriangleMesh& mesh);  ///< std::logic_error if it is empty: see box_if_any

/// The box round a mesh that may be empty, such as a part that a plane cut off: an empty mesh has
/// none.
std::optional<Box> box_if_any(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
