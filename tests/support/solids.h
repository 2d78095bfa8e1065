#pragma once

// Meshes with a formula, made for the tests. All face outward and are closed.

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <vector>

namespace brimwright::geometry::test {

using geometry::Point;

/// A corner of a turned profile: its radius and height.
struct Turned {
  double radius, height;
};

/// The profile turned about z in `sides` flat sides, with lids where it does not end on the axis.
TriangleMesh turned(const std::vector<Turned>& profile, std::uint32_t sides);
TriangleMesh ball(double radius, std::uint32_t rings, std::uint32_t sides);
/// A tube of radius `tube` whose middle runs round z at `ring`.
TriangleMesh torus(double ring, double tube, std::uint32_t tube_sides, std::uint32_t ring_sides);
/// Rectangular ends of a0 x b0 below and a1 x b1 above, about the z axis.
TriangleMesh obelisk(double a0, double b0, double a1, double b1, double height);
TriangleMesh box(const Point& low, const Point& high);
/// The share of a circle's area that its inscribed polygon has: (n / 2 pi) sin(2 pi / n).
double polygon_share(std::uint32_t sides);

// The same solid, otherwise placed or written.
TriangleMesh moved(TriangleMesh mesh, const Point& by);
TriangleMesh scaled(TriangleMesh mesh, double factor);
TriangleMesh stretched(TriangleMesh mesh, const Point& factors);
TriangleMesh turned_about_z(TriangleMesh mesh, double radians);
TriangleMesh on_its_side(TriangleMesh mesh);             ///< +x comes to point up
TriangleMesh refined(const TriangleMesh& mesh);          ///< each facet cut into four
TriangleMesh without_sharing(const TriangleMesh& mesh);  ///< three vertices for each facet
TriangleMesh inside_out(TriangleMesh mesh);
TriangleMesh together(TriangleMesh a, const TriangleMesh& b);

}  // namespace brimwright::geometry::test
