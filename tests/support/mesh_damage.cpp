#include "mesh_damage.h"

#include <algorithm>
#include <utility>

namespace brimwright::geometry::test {

TriangleMesh jittered(const TriangleMesh& mesh, double by, std::uint32_t seed) {
  TriangleMesh shaken = without_sharing(mesh);
  for (Point& p : shaken.vertices_mm) {
    for (double& coordinate : p) {
      seed = 1664525U * seed + 1013904223U;  // Numerical Recipes, chapter 7: a fixed sequence
      coordinate += by * (seed / 2147483648.0 - 1);
    }
  }
  return shaken;
}

TriangleMesh without_facets(TriangleMesh mesh, const std::vector<std::size_t>& facets) {
  std::size_t number = 0;
  std::erase_if(mesh.triangles, [&](const auto&) {
    return std::find(facets.begin(), facets.end(), number++) != facets.end();
  });
  return mesh;
}

TriangleMesh with_slit(TriangleMesh mesh, std::size_t facet, const Point& off) {
  const auto [a, b, c] = mesh.triangles[facet];
  const Point& p = mesh.vertices_mm[a];
  const Point& q = mesh.vertices_mm[b];
  const auto middle = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  mesh.vertices_mm.push_back(
      {(p[0] + q[0]) / 2 + off[0], (p[1] + q[1]) / 2 + off[1], (p[2] + q[2]) / 2 + off[2]});
  mesh.triangles[facet] = {a, middle, c};
  mesh.triangles.push_back({middle, b, c});
  return mesh;
}

TriangleMesh with_facet_again(TriangleMesh mesh, std::size_t facet) {
  const auto [a, b, c] = mesh.triangles[facet];
  mesh.triangles.push_back({b, c, a});
  return mesh;
}

TriangleMesh with_back_of_facet(TriangleMesh mesh, std::size_t facet) {
  const auto [a, b, c] = mesh.triangles[facet];
  mesh.triangles.push_back({a, c, b});
  return mesh;
}

TriangleMesh two_sided(const TriangleMesh& mesh) { return together(mesh, inside_out(mesh)); }

TriangleMesh with_collapsed_facet(TriangleMesh mesh, std::size_t facet) {
  const auto [a, b, c] = mesh.triangles[facet];
  mesh.vertices_mm.push_back(mesh.vertices_mm[b]);
  mesh.triangles.push_back({a, b, static_cast<std::uint32_t>(mesh.vertices_mm.size() - 1)});
  return mesh;
}

TriangleMesh with_facets_turned(TriangleMesh mesh, const std::vector<std::size_t>& facets) {
  for (const std::size_t facet : facets) {
    std::swap(mesh.triangles[facet][1], mesh.triangles[facet][2]);
  }
  return mesh;
}

}  // namespace brimwright::geometry::test
