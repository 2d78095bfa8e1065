#pragma once

#include "geometry/enclosed_volume.h"
#include "geometry/triangle_mesh.h"

#include <optional>

namespace brimwright::geometry {

/// The box round a mesh that may be empty, such as a part that a plane cut off: an empty mesh has
/// none.
std::optional<Box> box_if_any(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
