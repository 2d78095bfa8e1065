#include "geometry/repair/facet_neighbours.h"

#include <algorithm>
#include <map>
#include <utility>

namespace brimwright::geometry {
namespace {

struct Side {
  std::uint64_t edge;  // its two vertices, the lower one first
  std::uint32_t side;
};

std::vector<Side> sorted_sides(const TriangleMesh& mesh) {
  std::vector<Side> sides;
  sides.reserve(3 * mesh.triangles.size());
  for (std::uint32_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    const auto& corners = mesh.triangles[facet];
    for (std::uint32_t i = 0; i < 3; ++i) {
      const auto [low, high] = std::minmax(corners[i], corners[(i + 1) % 3]);
      sides.push_back({std::uint64_t{low} << 32 | high, 3 * facet + i});
    }
  }
  std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
    return a.edge != b.edge ? a.edge < b.edge : a.side < b.side;
  });
  return sides;
}

}  // namespace

FacetNeighbours::FacetNeighbours(const TriangleMesh& mesh)
    : across_(3 * mesh.triangles.size(), open) {
  const std::vector<Side> sides = sorted_sides(mesh);
  for (std::size_t first = 0, end = 0; first < sides.size(); first = end) {
    while (end < sides.size() && sides[end].edge == sides[first].edge) ++end;
    if (end - first == 2) {
      across_[sides[first].side] = sides[first + 1].side;
      across_[sides[first + 1].side] = sides[first].side;
    } else if (end - first > 2) {
      for (std::size_t i = first; i < end; ++i) across_[sides[i].side] = crowded;
    }
  }
}

std::vector<std::vector<std::uint32_t>> FacetNeighbours::crowded_edges(
    const TriangleMesh& mesh) const {
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::vector<std::uint32_t>> sides;
  for (std::uint32_t side = 0; side < across_.size(); ++side) {
    if (across_[side] != crowded) continue;
    const auto& corners = mesh.triangles[side / 3];
    sides[std::minmax(corners[side % 3], corners[(side % 3 + 1) % 3])].push_back(side);
  }
  std::vector<std::vector<std::uint32_t>> edges;
  for (auto& [ends, at_edge] : sides) edges.push_back(std::move(at_edge));
  return edges;
}

void FacetNeighbours::pair(std::uint32_t side, std::uint32_t other) {
  across_[side] = other;
  across_[other] = side;
}

std::vector<std::uint32_t> FacetNeighbours::border_vertices(const TriangleMesh& mesh) const {
  std::vector<std::uint32_t> vertices;
  for (std::size_t side = 0; side < across_.size(); ++side) {
    if (across_[side] != open) continue;
    const auto& corners = mesh.triangles[side / 3];
    vertices.push_back(corners[side % 3]);
    vertices.push_back(corners[(side % 3 + 1) % 3]);
  }
  std::sort(vertices.begin(), vertices.end());
  vertices.erase(std::unique(vertices.begin(), vertices.end()), vertices.end());
  return vertices;
}

}  // namespace brimwright::geometry
