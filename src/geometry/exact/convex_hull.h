#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <optional>

namespace brimwright::geometry {

/// The least convex solid that holds all vertices, facing outward; nothing for what is flat.
std::optional<TriangleMesh> convex_hull(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
