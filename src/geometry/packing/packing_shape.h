#pragma once

#include "geometry/distance/surface_tree.h"
#include "geometry/packing/packing_field.h"
#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"

#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// Points spread over a surface, each as far from those before it as any can be: its outermost
/// corners come first, and any number of the first ones is spread as evenly as that many can be.
std::vector<Vector> spread_points(const TriangleMesh& solid, std::size_t count);

/// Balls inside a body that together hold most of it, the largest first. `inside` is its
/// distance field.
std::vector<Probe> inner_balls(const SurfaceTree& body, const DistanceField& inside,
                               std::size_t most);

/// One point of each separate shell of a surface.
std::vector<Vector> shell_points(const TriangleMesh& surface);

}  // namespace brimwright::geometry
