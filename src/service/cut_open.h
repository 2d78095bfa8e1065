#pragma once

#include "geometry/sections/plane_cut.h"
#include "geometry/surface/triangle_mesh.h"

#include <vector>

namespace brimwright::service {

/// The upright plane through the middle of the box round all of them, facing away from who looks
/// from the front: what lies above it is seen when the front half is taken off.
geometry::Plane knife_through(const std::vector<const geometry::TriangleMesh*>& solids);

/// The rear half of a surface, left open where it was cut: of a wall that is looked through.
geometry::TriangleMesh rear_of_wall(const geometry::TriangleMesh& wall,
                                    const geometry::Plane& knife);

}  // namespace brimwright::service
