#include "geometry/repair/facet_neighbours.h"

#include <algorithm>
#include <map>
#include <utility>

namespace brimwright::geometry {
namespace {

struct HalfEdge {
  std::uint64_t edge;  // its two vertices, the lower one first
  std::uint32_t half;
};

std::vector<HalfEdge> sorted_halves(const TriangleMesh& mesh) {
  std::vector<HalfEdge> halves;
  halves.reserve(3 * mesh.triangles.size());
  for (std::uint32_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    const auto& corners = mesh.triangles[facet];
    for (std::uint32_t i = 0; i < 3; ++i) {
      const auto [low, high] = std::minmax(corners[i], corners[(i + 1) % 3]);
      halves.push_back({std::uint64_t{low} << 32 | high, 3 * facet + i});
    }
  }
  std::sort(halves.begin(), halves.end(), [](const HalfEdge& a, const HalfEdge& b) {
    return a.edge != b.edge ? a.edge < b.edge : a.half < b.half;
  });
  return halves;
}

}  // namespace

FacetNeighbours::FacetNeighbours(const TriangleMesh& mesh)
    : across_(3 * mesh.triangles.size(), open) {
  const std::vector<HalfEdge> halves = sorted_halves(mesh);
  for (std::size_t first = 0, end = 0; first < halves.size(); first = end) {
    while (end < halves.size() && halves[end].edge == halves[first].edge) ++end;
    if (end - first == 2) {
      across_[halves[first].half] = halves[first + 1].half;
      across_[halves[first + 1].half] = halves[first].half;
    } else if (end - first > 2) {
      for (std::size_t i = first; i < end; ++i) across_[halves[i].half] = crowded;
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

void FacetNeighbours::pair(std::uint32_t half, std::uint32_t other) {
  across_[half] = other;
  across_[other] = half;
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
