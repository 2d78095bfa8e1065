#include "geometry/repair/self_crossing.h"

#include "geometry/surface/surface_edges.h"
#include "geometry/surface/weld.h"
#include "solids.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Surface_mesh.h>
#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cstdint>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;

/// How many pairs of facets CGAL's own mesh test finds to meet.
std::size_t pairs_by_cgal(const TriangleMesh& mesh) {
  Mesh other;
  std::vector<Mesh::Vertex_index> vertices;
  for (const auto& [x, y, z] : mesh.vertices_mm) {
    vertices.push_back(other.add_vertex(Kernel::Point_3(x, y, z)));
  }
  for (const auto& [a, b, c] : mesh.triangles) {
    other.add_face(vertices[a], vertices[b], vertices[c]);
  }
  std::vector<std::pair<Mesh::Face_index, Mesh::Face_index>> pairs;
  CGAL::Polygon_mesh_processing::self_intersections(other, std::back_inserter(pairs));
  return pairs.size();
}

std::size_t pairs_here(const TriangleMesh& mesh) {
  const auto crossing = self_crossing(mesh, surface_edges(mesh), "test");
  return crossing ? crossing->pairs : 0;
}

TEST_CASE("crossings are those that CGAL's mesh test finds", "[geometry][law]") {
  rc::prop("in crumpled balls and rings", [] {
    const auto sides = *rc::gen::inRange<std::uint32_t>(5, 12);
    TriangleMesh mesh =
        *rc::gen::arbitrary<bool>() ? test::ball(20, 7, sides) : test::torus(20, 8, 6, sides);
    drop_unused_vertices(mesh);
    const int most = *rc::gen::element(1, 30, 120);
    const bool on_a_grid = *rc::gen::arbitrary<bool>();  // with many facets in one plane
    for (auto& p : mesh.vertices_mm) {
      for (double& coordinate : p) {
        coordinate += *rc::gen::inRange(-most, most + 1) / 10.0;
        if (on_a_grid) coordinate = std::round(coordinate / 4) * 4;
      }
    }
    // What collapsed on the grid is no mesh for CGAL.
    const std::size_t corners = mesh.vertices_mm.size();
    const TriangleMesh joined = welded(mesh);
    RC_PRE(joined.vertices_mm.size() == corners);
    for (const auto& [a, b, c] : joined.triangles) {
      const auto& v = joined.vertices_mm;
      RC_PRE(!CGAL::collinear(Kernel::Point_3(v[a][0], v[a][1], v[a][2]),
                              Kernel::Point_3(v[b][0], v[b][1], v[b][2]),
                              Kernel::Point_3(v[c][0], v[c][1], v[c][2])));
    }
    RC_ASSERT(pairs_here(joined) == pairs_by_cgal(joined));
  });
}

}  // namespace
}  // namespace brimwright::geometry
