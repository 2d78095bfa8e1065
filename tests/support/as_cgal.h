#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "geometry/surface/weld.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Surface_mesh.h>

#include <vector>

namespace brimwright::geometry::test {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using CgalMesh = CGAL::Surface_mesh<Kernel::Point_3>;

/// The same mesh for CGAL to give its own opinion on.
inline CgalMesh as_cgal(TriangleMesh mesh) {
  drop_unused_vertices(mesh);  // CGAL calls a mesh with some invalid
  CgalMesh other;
  std::vector<CgalMesh::Vertex_index> vertices;
  for (const auto& [x, y, z] : mesh.vertices_mm)
    vertices.push_back(other.add_vertex(Kernel::Point_3(x, y, z)));
  for (const auto& [a, b, c] : mesh.triangles)
    other.add_face(vertices[a], vertices[b], vertices[c]);
  return other;
}

}  // namespace brimwright::geometry::test
