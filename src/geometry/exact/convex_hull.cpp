#include "geometry/exact/convex_hull.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/convex_hull_3.h>

#include <exception>
#include <vector>

namespace brimwright::geometry {
namespace {

using HullPoint = CGAL::Exact_predicates_inexact_constructions_kernel::Point_3;
using Surface = CGAL::Surface_mesh<HullPoint>;

/// CGAL's own handler prints; a broken precondition is told by its exception alone.
void stay_silent(const char*, const char*, const char*, int, const char*) {}

TriangleMesh as_triangles(const Surface& surface) {
  TriangleMesh mesh;
  for (const auto v : surface.vertices()) {
    const HullPoint& p = surface.point(v);
    mesh.vertices_mm.push_back({p.x(), p.y(), p.z()});
  }
  for (const auto face : surface.faces()) {
    std::vector<std::uint32_t> corners;
    for (const auto v : surface.vertices_around_face(surface.halfedge(face)))
      corners.push_back(static_cast<std::uint32_t>(v));
    for (std::size_t i = 2; i < corners.size(); ++i)
      mesh.triangles.push_back({corners[0], corners[i - 1], corners[i]});
  }
  return mesh;
}

}  // namespace

std::optional<TriangleMesh> convex_hull(const TriangleMesh& mesh) try {
  CGAL::set_error_handler(stay_silent);
  std::vector<HullPoint> points;
  points.reserve(mesh.vertices_mm.size());
  for (const auto& [x, y, z] : mesh.vertices_mm) points.emplace_back(x, y, z);
  Surface surface;
  CGAL::convex_hull_3(points.begin(), points.end(), surface);
  if (surface.number_of_faces() < 4) return std::nullopt;
  return as_triangles(surface);
} catch (const CGAL::Failure_exception&) {
  return std::nullopt;
}

}  // namespace brimwright::geometry
