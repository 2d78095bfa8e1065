#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/vectors.h"
#include "units/angle.h"

#include <array>

namespace brimwright::geometry {

/// Where a solid lies: turned about the origin, then moved.
struct Placement {
  std::array<Point, 3> turn = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};  // rows; a rotation
  Vector move_mm = {0, 0, 0};
};

/// Turned about the x axis, then the y axis, then the z axis (fixed axes, anticlockwise seen from
/// their positive end).
std::array<Point, 3> turned_about_axes(Angle x, Angle y, Angle z);

Vector placed(const Vector& point, const Placement& placement);
TriangleMesh placed(const TriangleMesh& mesh, const Placement& placement);

/// `mesh` moved so that its bounding box is centred on the z axis and stands on z = 0.
TriangleMesh centred_on_floor(const TriangleMesh& mesh);

}  // namespace brimwright::geometry
