#pragma once

#include "geometry/distance/placement.h"
#include "geometry/surface/vectors.h"

#include <array>

namespace brimwright::geometry {

/// A box that may be turned.
struct OrientedBox {
  Vector middle;
  std::array<Vector, 3> axes;  // of length 1, at right angles
  Vector half;                 // half its size along each
};

OrientedBox placed(const OrientedBox& box, const Placement& placement);

/// No more than the distance between the boxes: what shows along the axes of one and of the other.
/// Close to it for flat boxes that lie face to face.
double least_distance_mm(const OrientedBox& a, const OrientedBox& b);

/// Exactly, 0 inside.
double distance_mm(const Vector& point, const OrientedBox& box);

}  // namespace brimwright::geometry
