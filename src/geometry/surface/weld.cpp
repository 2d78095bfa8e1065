#include "geometry/surface/weld.h"

#include "geometry/surface/place_table.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();

}  // namespace

TriangleMesh welded(const TriangleMesh& mesh) {
  TriangleMesh joined;
  joined.triangles = mesh.triangles;
  PlaceTable<double> table;
  // What a closed surface has (Euler): a small table stays near the processor.
  table.reserve(std::min(mesh.vertices_mm.size(), mesh.triangles.size() / 2 + 2));
  std::vector<std::uint32_t> number(mesh.vertices_mm.size(), none);
  for (auto& corners : joined.triangles) {
    for (std::uint32_t& corner : corners) {
      std::uint32_t& known = number[corner];
      if (known == none) {
        Point p = mesh.vertices_mm[corner];
        for (double& coordinate : p) coordinate += 0.0;  // makes 0 of -0
        table.reserve(1);
        known = table.number_of(p, table.hash_of(p));
      }
      corner = known;
    }
  }
  joined.vertices_mm = std::move(table).taken();
  return joined;
}

void drop_unused_vertices(TriangleMesh& mesh) {
  std::vector<std::uint32_t> number(mesh.vertices_mm.size(), none);
  std::vector<Point> used;
  for (auto& corners : mesh.triangles) {
    for (std::uint32_t& corner : corners) {
      if (number[corner] == none) {
        number[corner] = static_cast<std::uint32_t>(used.size());
        used.push_back(mesh.vertices_mm[corner]);
      }
      corner = number[corner];
    }
  }
  mesh.vertices_mm = std::move(used);
}

std::size_t drop_collapsed_facets(TriangleMesh& mesh) {
  return std::erase_if(mesh.triangles, [](const auto& corners) {
    return corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0];
  });
}

}  // namespace brimwright::geometry
