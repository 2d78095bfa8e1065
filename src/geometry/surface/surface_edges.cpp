#include "geometry/surface/surface_edges.h"

#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/large_pages.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <limits>
#include <numeric>
#include <span>

namespace brimwright::geometry {
namespace {

/// A facet's half of an edge, listed under the edge's lower vertex; packed so that those of a
/// vertex are sorted by comparing whole numbers.
class HalfEdge {
 public:
  HalfEdge() = default;
  HalfEdge(std::uint32_t higher_vertex, std::uint32_t facet, bool upwards)
      : packed_(std::uint64_t{higher_vertex} << 32 | facet << 1 | (upwards ? 1U : 0U)) {}

  std::uint32_t higher_vertex() const { return static_cast<std::uint32_t>(packed_ >> 32); }
  std::uint32_t facet() const { return static_cast<std::uint32_t>(packed_) >> 1; }
  /// The facet goes from the lower vertex to the higher.
  bool upwards() const { return (packed_ & 1) != 0; }
  bool operator<(const HalfEdge& other) const { return packed_ < other.packed_; }

 private:
  std::uint64_t packed_ = 0;
};

/// All of them, grouped by their lower vertex and, in a group, by the higher one and the facet.
class HalfEdges {
 public:
  explicit HalfEdges(const TriangleMesh& mesh) : first_(mesh.vertices_mm.size() + 1, 0) {
    reserve_large(halves_, 3 * mesh.triangles.size());
    halves_.resize(3 * mesh.triangles.size());
    assert(mesh.triangles.size() < std::size_t{1} << 31);  // HalfEdge has 31 bits for a facet
    for_each_half(mesh, [&](std::uint32_t low, HalfEdge) { ++first_[low + 1]; });
    std::partial_sum(first_.begin(), first_.end(), first_.begin());
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for_each_half(mesh, [&](std::uint32_t low, HalfEdge half) { halves_[next[low]++] = half; });
    for (std::size_t v = 0; v + 1 < first_.size(); ++v) sort(of_vertex(v));
  }

  std::span<HalfEdge> of_vertex(std::size_t v) {
    return std::span(halves_).subspan(first_[v], first_[v + 1] - first_[v]);
  }
  std::size_t vertices() const { return first_.size() - 1; }

 private:
  static void sort(std::span<HalfEdge> group) {
    constexpr std::size_t few = 16;  // nearly all groups, which a plain insertion sorts faster
    if (group.size() > few) return std::sort(group.begin(), group.end());
    for (std::size_t i = 1; i < group.size(); ++i) {
      const HalfEdge half = group[i];
      std::size_t at = i;
      for (; at > 0 && half < group[at - 1]; --at) group[at] = group[at - 1];
      group[at] = half;
    }
  }

  template <class See>
  static void for_each_half(const TriangleMesh& mesh, See see) {
    for (std::uint32_t facet = 0; facet < mesh.triangles.size(); ++facet) {
      const auto& corners = mesh.triangles[facet];
      for (std::size_t i = 0; i < 3; ++i) {
        const std::uint32_t from = corners[i];
        const std::uint32_t to = corners[(i + 1) % 3];
        see(std::min(from, to), HalfEdge(std::max(from, to), facet, from < to));
      }
    }
  }

  std::vector<std::uint32_t> first_;
  std::vector<HalfEdge> halves_;
};

/// Numbers the shells by their first facets.
std::uint32_t number_shells(DisjointSets& facets, std::vector<std::uint32_t>& shell) {
  shell.resize(facets.size());
  std::uint32_t shells = 0;
  for (std::uint32_t facet = 0; facet < shell.size(); ++facet) {
    const std::uint32_t first = facets.root(facet);
    shell[facet] = first == facet ? shells++ : shell[first];
  }
  return shells;
}

/// A fault while it is being counted: its first place is known by its facet.
struct Tally {
  EdgeFault fault;
  std::uint32_t first_facet = std::numeric_limits<std::uint32_t>::max();

  void count(const TriangleMesh& mesh, std::size_t low, const HalfEdge& half) {
    ++fault.edges;
    if (half.facet() >= first_facet) return;
    first_facet = half.facet();
    const auto& a = mesh.vertices_mm[low];
    const auto& b = mesh.vertices_mm[half.higher_vertex()];
    for (std::size_t i = 0; i < 3; ++i) fault.first_mm[i] = (a[i] + b[i]) / 2;
  }
};

}  // namespace

SurfaceEdges surface_edges(const TriangleMesh& mesh) {
  HalfEdges halves(mesh);
  DisjointSets shells(mesh.triangles.size());
  Tally open, crowded, turned;
  for (std::size_t low = 0; low < halves.vertices(); ++low) {
    std::span<const HalfEdge> group = halves.of_vertex(low);
    while (!group.empty()) {
      const auto other = std::find_if(group.begin(), group.end(), [&](const HalfEdge& half) {
        return half.higher_vertex() != group.front().higher_vertex();
      });
      const auto edge = group.first(static_cast<std::size_t>(other - group.begin()));
      if (edge.size() == 1) open.count(mesh, low, edge[0]);
      if (edge.size() > 2) crowded.count(mesh, low, edge[0]);
      if (edge.size() == 2) {
        if (edge[0].upwards() == edge[1].upwards()) turned.count(mesh, low, edge[0]);
        shells.unite(edge[0].facet(), edge[1].facet());
      }
      group = group.subspan(edge.size());
    }
  }
  SurfaceEdges edges{
      .open = open.fault, .crowded = crowded.fault, .turned = turned.fault, .shell = {}};
  edges.shells = number_shells(shells, edges.shell);
  return edges;
}

}  // namespace brimwright::geometry
