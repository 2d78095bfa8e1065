#include "geometry/surface/surface_edges.h"

#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/large_pages.h"
#include "geometry/surface/parallel.h"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <limits>
#include <span>
#include <utility>

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

/// All of them, grouped by their lower vertex and, once a group is sorted, in it by the higher one
/// and the facet.
class HalfEdges {
 public:
  explicit HalfEdges(const TriangleMesh& mesh) : first_(mesh.vertices_mm.size() + 1, 0) {
    reserve_large(halves_, 3 * mesh.triangles.size());
    halves_.resize(3 * mesh.triangles.size());
    assert(mesh.triangles.size() < std::size_t{1} << 31);  // HalfEdge has 31 bits for a facet
    // Stretches of facets, each with a count of its own for each vertex.
    constexpr std::size_t least_facets = std::size_t{1} << 16;
    std::vector<std::vector<std::uint32_t>> next(
        std::clamp<std::size_t>(mesh.triangles.size() / least_facets, 1, things_at_once()));
    in_parallel(next.size(), [&](std::size_t stretch) {
      next[stretch].resize(mesh.vertices_mm.size());
      for_each_half(mesh, stretch, next.size(),
                    [at = next[stretch].data()](std::uint32_t low, HalfEdge) { ++at[low]; });
    });
    std::uint32_t at = 0;
    for (std::size_t v = 0; v < mesh.vertices_mm.size(); ++v) {
      first_[v] = at;
      for (auto& counts : next) at += std::exchange(counts[v], at);
    }
    first_.back() = at;
    in_parallel(next.size(), [&](std::size_t stretch) {
      for_each_half(mesh, stretch, next.size(),
                    [at = next[stretch].data(), halves = halves_.data()](
                        std::uint32_t low, HalfEdge half) { halves[at[low]++] = half; });
    });
  }

  std::span<HalfEdge> sorted_of_vertex(std::size_t v) {
    const auto group = std::span(halves_).subspan(first_[v], first_[v + 1] - first_[v]);
    sort(group);
    return group;
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
  static void for_each_half(const TriangleMesh& mesh, std::size_t stretch, std::size_t stretches,
                            See see) {
    const std::size_t facets = mesh.triangles.size();
    const auto end = static_cast<std::uint32_t>(facets * (stretch + 1) / stretches);
    const auto* const triangles = mesh.triangles.data();
    for (auto facet = static_cast<std::uint32_t>(facets * stretch / stretches); facet < end;
         ++facet) {
      const auto& corners = triangles[facet];
      for (std::size_t i = 0; i < 3; ++i) {
        const std::uint32_t from = corners[i];
        const std::uint32_t to = corners[i == 2 ? 0 : i + 1];
        see(std::min(from, to), HalfEdge(std::max(from, to), facet, from < to));
      }
    }
  }

  std::vector<std::uint32_t> first_;
  std::vector<HalfEdge> halves_;
};

/// Numbers the shells by their first facets.
std::uint32_t number_shells(const SharedSets& facets, std::vector<std::uint32_t>& shell) {
  shell.resize(facets.size());
  in_stretches(shell.size(), [&, roots = shell.data()](std::size_t facet) {
    roots[facet] = facets.root(static_cast<std::uint32_t>(facet));
  });
  std::uint32_t shells = 0;
  for (std::uint32_t facet = 0; facet < shell.size(); ++facet)
    shell[facet] = shell[facet] == facet ? shells++ : shell[shell[facet]];
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

  /// Of the vertices that follow.
  void add(const Tally& more) {
    fault.edges += more.fault.edges;
    if (more.first_facet >= first_facet) return;
    first_facet = more.first_facet;
    fault.first_mm = more.fault.first_mm;
  }
};

struct Tallies {
  Tally open, crowded, turned;

  void add(const Tallies& more) {
    open.add(more.open);
    crowded.add(more.crowded);
    turned.add(more.turned);
  }
};

/// Counts what is wrong at the edges whose lower vertex is `low`, and unites the facets that meet
/// at those that are sound.
void look_at(const TriangleMesh& mesh, std::size_t low, std::span<const HalfEdge> group,
             Tallies& tallies, SharedSets& shells) {
  while (!group.empty()) {
    const auto other = std::find_if(group.begin(), group.end(), [&](const HalfEdge& half) {
      return half.higher_vertex() != group.front().higher_vertex();
    });
    const auto edge = group.first(static_cast<std::size_t>(other - group.begin()));
    if (edge.size() == 1) tallies.open.count(mesh, low, edge[0]);
    if (edge.size() > 2) tallies.crowded.count(mesh, low, edge[0]);
    if (edge.size() == 2) {
      if (edge[0].upwards() == edge[1].upwards()) tallies.turned.count(mesh, low, edge[0]);
      shells.unite(edge[0].facet(), edge[1].facet());
    }
    group = group.subspan(edge.size());
  }
}

}  // namespace

SurfaceEdges surface_edges(const TriangleMesh& mesh) {
  HalfEdges halves(mesh);
  SharedSets shells(mesh.triangles.size());
  constexpr std::size_t in_part = std::size_t{1} << 14;
  std::vector<Tallies> tallies((halves.vertices() + in_part - 1) / in_part);
  in_parallel(tallies.size(), [&](std::size_t part) {
    const std::size_t end = std::min(halves.vertices(), (part + 1) * in_part);
    for (std::size_t low = part * in_part; low < end; ++low)
      look_at(mesh, low, halves.sorted_of_vertex(low), tallies[part], shells);
  });
  Tallies all;
  for (const Tallies& part : tallies) all.add(part);
  SurfaceEdges edges{.open = all.open.fault,
                     .crowded = all.crowded.fault,
                     .turned = all.turned.fault,
                     .shell = {}};
  edges.shells = number_shells(shells, edges.shell);
  return edges;
}

}  // namespace brimwright::geometry
