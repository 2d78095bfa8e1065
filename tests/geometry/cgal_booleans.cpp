#include "cgal_booleans.h"

#include <CGAL/Polygon_mesh_processing/clip.h>
#include <CGAL/Polygon_mesh_processing/connected_components.h>
#include <CGAL/Polygon_mesh_processing/corefinement.h>
#include <CGAL/Polygon_mesh_processing/measure.h>
#include <catch2/catch.hpp>

#include <utility>

namespace brimwright::geometry::test {

namespace PMP = CGAL::Polygon_mesh_processing;

CgalMesh clipped(const TriangleMesh& mesh, const Kernel::Plane_3& plane) {
  CgalMesh part = as_cgal(mesh);
  PMP::clip(part, plane, CGAL::parameters::clip_volume(true));
  return part;
}

std::vector<CgalMesh> difference(CgalMesh whole, CgalMesh part) {
  CgalMesh left;
  REQUIRE(PMP::corefine_and_compute_difference(whole, part, left));
  std::vector<CgalMesh> parts;
  PMP::split_connected_components(left, parts);
  return parts;
}

CgalMesh united(const std::vector<TriangleMesh>& parts) {
  CgalMesh all = as_cgal(parts.front());
  for (std::size_t i = 1; i < parts.size(); ++i) {
    CgalMesh part = as_cgal(parts[i]), sum;
    REQUIRE(PMP::corefine_and_compute_union(all, part, sum));
    all = std::move(sum);
  }
  return all;
}

double volume(const CgalMesh& mesh) { return CGAL::to_double(PMP::volume(mesh)); }

double area(const CgalMesh& mesh, CgalMesh::Face_index face) {
  return CGAL::to_double(PMP::face_area(face, mesh));
}

}  // namespace brimwright::geometry::test
