#include "geometry/repair/mend_touching.h"

#include "geometry/repair/facet_neighbours.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

/// A facet met when going round an edge, anticlockwise seen against the edge's direction.
struct Leaf {
  double angle;
  bool opens;  // material follows; otherwise material ends here
  std::uint32_t side;
};

std::vector<Leaf> leaves_round(const TriangleMesh& mesh, const std::vector<std::uint32_t>& sides) {
  const auto& v = mesh.vertices_mm;
  const auto corner = [&](std::uint32_t side, std::uint32_t ahead) {
    return mesh.triangles[side / 3][(side % 3 + ahead) % 3];
  };
  const std::uint32_t from = std::min(corner(sides[0], 0), corner(sides[0], 1));
  const std::uint32_t to = std::max(corner(sides[0], 0), corner(sides[0], 1));
  const Vector along = v[to] - v[from];
  const auto outwards = [&](std::uint32_t side) {
    const Vector out = v[corner(side, 2)] - v[from];
    return out - along * (dot(out, along) / dot(along, along));
  };
  const Vector ahead = outwards(sides[0]);
  const Vector left = cross(along, ahead) * (1 / length(along));
  std::vector<Leaf> leaves;
  for (const std::uint32_t side : sides) {
    const Vector out = outwards(side);
    // A facet that goes along the edge has its normal on the far side, its material before it.
    leaves.push_back({std::atan2(dot(out, left), dot(out, ahead)), corner(side, 0) == to, side});
  }
  return leaves;
}

/// In the order of angles; where two are the same, material ends before other material begins.
void sort_round(std::vector<Leaf>& leaves) {
  constexpr double same = 1e-6;  // radians, what coordinates of single precision leave of an angle
  std::sort(leaves.begin(), leaves.end(),
            [](const Leaf& a, const Leaf& b) { return a.angle < b.angle; });
  for (auto first = leaves.begin(); first != leaves.end();) {
    auto end = first + 1;
    while (end != leaves.end() && end->angle - (end - 1)->angle <= same) ++end;
    std::stable_partition(first, end, [](const Leaf& leaf) { return !leaf.opens; });
    first = end;
  }
  // Begin where least material is about, so that none goes on past the end of the list.
  int balance = 0, least = 0;
  auto start = leaves.begin();
  for (auto leaf = leaves.begin(); leaf != leaves.end(); ++leaf) {
    balance += leaf->opens ? 1 : -1;
    if (balance < least) {
      least = balance;
      start = leaf + 1;
    }
  }
  std::rotate(leaves.begin(), start, leaves.end());
}

void pair_round(const std::vector<Leaf>& leaves, const SurfaceEdges& edges,
                FacetNeighbours& neighbours) {
  std::vector<Leaf> begun;
  for (const Leaf& leaf : leaves) {
    if (leaf.opens) {
      begun.push_back(leaf);
      continue;
    }
    if (begun.empty()) return;
    auto partner = std::find_if(begun.begin(), begun.end(), [&](const Leaf& other) {
      return edges.shell[other.side / 3] == edges.shell[leaf.side / 3];
    });
    if (partner == begun.end()) partner = begun.begin();
    neighbours.pair(partner->side, leaf.side);
    begun.erase(partner);
  }
}

/// Facets' corners, gathered into fans.
DisjointSets fans_of(const TriangleMesh& mesh, const FacetNeighbours& neighbours) {
  const auto next = [](std::uint32_t half) { return half / 3 * 3 + (half % 3 + 1) % 3; };
  DisjointSets corners(3 * mesh.triangles.size());
  for (std::uint32_t half = 0; half < corners.size(); ++half) {
    const std::uint32_t other = neighbours.across(half);
    if (other >= FacetNeighbours::crowded || other < half) continue;
    corners.unite(half, next(other));
    corners.unite(next(half), other);
  }
  return corners;
}

}  // namespace

TriangleMesh touching_apart(const TriangleMesh& mesh) {
  FacetNeighbours neighbours(mesh);
  const SurfaceEdges edges = surface_edges(mesh);
  constexpr std::size_t most = 1000;  // facets at an edge, our own bound: each is held against each
  for (const std::vector<std::uint32_t>& sides : neighbours.crowded_edges(mesh)) {
    if (sides.size() > most) continue;  // stays crowded, which is refused
    std::vector<Leaf> leaves = leaves_round(mesh, sides);
    sort_round(leaves);
    pair_round(leaves, edges, neighbours);
  }
  DisjointSets fans = fans_of(mesh, neighbours);
  TriangleMesh apart;
  apart.triangles.resize(mesh.triangles.size());
  std::vector<std::uint32_t> number(3 * mesh.triangles.size());
  for (std::uint32_t corner = 0; corner < number.size(); ++corner) {
    const std::uint32_t fan = fans.root(corner);
    if (fan == corner) {
      number[corner] = static_cast<std::uint32_t>(apart.vertices_mm.size());
      apart.vertices_mm.push_back(mesh.vertices_mm[mesh.triangles[corner / 3][corner % 3]]);
    }
    apart.triangles[corner / 3][corner % 3] = number[fan];
  }
  return apart;
}

}  // namespace brimwright::geometry
