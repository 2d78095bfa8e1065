#pragma once

#include "geometry/surface/triangle_mesh.h"

#include <array>
#include <cstdint>
#include <vector>

namespace brimwright::geometry {

/// All points p with normal . p = offset. The side that the normal points to is above.
struct Plane {
  Point normal;  // of length one
  double offset_mm = 0;

  static Plane level(double z_mm) { return {{0, 0, 1}, z_mm}; }
  Plane flipped() const { return {{-normal[0], -normal[1], -normal[2]}, -offset_mm}; }
};

/// What a plane leaves of a closed surface below it, and where the two meet.
struct PlaneCut {
  std::vector<Point> vertices_mm;                    // the solid's, then those of cut edges
  std::vector<std::array<std::uint32_t, 3>> below;   // facets, and parts of facets
  std::vector<std::vector<std::uint32_t>> outlines;  // closed, as in plane_section
};

/// A vertex on the plane counts as above it, so that every facet that is cut is cut at two edges
/// and the outlines close whatever lies on the plane. A vertex off it by no more than 1e-13 of the
/// coordinates counts as on it and stays where it is.
///
/// For a welded, closed surface (see checked_solid); std::logic_error for one that is not closed
/// where it is cut.
PlaneCut plane_cut(const TriangleMesh& solid, const Plane& plane);

/// A closed line of straight pieces; the last point joins the first.
using ClosedLine = std::vector<Point>;

/// Where a plane cuts a closed solid: the section's borders, with the solid on their left as seen
/// from above the plane; so outer borders run anticlockwise and those of holes clockwise.
///
/// Where the plane holds facets or edges of the solid, the section is the one just below it; that
/// of the flipped plane is the one just above. Exact but for the rounding of the cut edges' points.
/// For a closed, outward-facing solid (see checked_solid).
std::vector<ClosedLine> plane_section(const TriangleMesh& solid, const Plane& plane);

}  // namespace brimwright::geometry
