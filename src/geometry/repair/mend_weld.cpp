#include "geometry/repair/mend_weld.h"

#include "geometry/repair/facet_neighbours.h"
#include "geometry/repair/point_tree.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"
#include "units/printing.h"

#include <algorithm>
#include <numeric>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

/// For each vertex, the one that its cluster goes by: itself if it is alone or the first.
std::vector<std::uint32_t> clusters(const TriangleMesh& mesh, double reach) {
  std::vector<std::uint32_t> leader(mesh.vertices_mm.size());
  std::iota(leader.begin(), leader.end(), 0U);
  const std::vector<std::uint32_t> border = FacetNeighbours(mesh).border_vertices(mesh);
  std::vector<Vector> points;
  for (const std::uint32_t v : border) points.push_back(mesh.vertices_mm[v]);
  const PointTree tree(points);
  std::vector<bool> taken(border.size(), false);
  for (std::size_t i = 0; i < border.size(); ++i) {
    if (taken[i]) continue;
    tree.for_each_near(points[i], points[i], reach, [&](std::uint32_t near) {
      if (taken[near]) return;
      taken[near] = true;
      leader[border[near]] = border[i];
    });
  }
  return leader;
}

struct Moves {
  std::vector<Vector> place;      // of each vertex's cluster
  std::vector<std::size_t> size;  // of each leader's cluster
};

Moves moved_to_middles(const TriangleMesh& mesh, const std::vector<std::uint32_t>& leader) {
  Moves moves{std::vector<Vector>(leader.size(), Vector{}),
              std::vector<std::size_t>(leader.size(), 0)};
  for (std::size_t v = 0; v < leader.size(); ++v) {
    const Vector from_leader = mesh.vertices_mm[v] - mesh.vertices_mm[leader[v]];
    moves.place[leader[v]] = moves.place[leader[v]] + from_leader;
    ++moves.size[leader[v]];
  }
  for (std::size_t v = 0; v < leader.size(); ++v) {
    if (leader[v] != v) continue;
    moves.place[v] =
        mesh.vertices_mm[v] + moves.place[v] * (1.0 / static_cast<double>(moves.size[v]));
  }
  return moves;
}

}  // namespace

std::optional<Mend> join_near_corners(TriangleMesh& mesh, double reach_mm) {
  const std::vector<std::uint32_t> leader = clusters(mesh, reach_mm);
  const Moves moves = moved_to_middles(mesh, leader);
  Mend mend{.flaw = Flaw::unshared_corners, .what = {}, .bound = {}};
  std::vector<double> distance(leader.size(), 0);
  for (std::size_t v = 0; v < leader.size(); ++v) {
    if (moves.size[leader[v]] < 2) continue;
    if (mend.count++ == 0) mend.first_mm = mesh.vertices_mm[v];
    distance[v] = length(mesh.vertices_mm[v] - moves.place[leader[v]]);
  }
  if (mend.count == 0) return std::nullopt;
  TriangleMesh joined{moves.place, mesh.triangles};
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    double farthest = 0;
    for (std::uint32_t& v : joined.triangles[facet]) {
      farthest = std::max(farthest, distance[v]);
      v = leader[v];
    }
    const double area =
        std::max(area_mm2(mesh, mesh.triangles[facet]), area_mm2(joined, joined.triangles[facet]));
    mend.bound += area * farthest * cubic_millimetre;
  }
  drop_collapsed_facets(joined);
  drop_unused_vertices(joined);
  mesh = std::move(joined);
  const double apart = 2 * *std::max_element(distance.begin(), distance.end());
  mend.what = std::to_string(mend.count) + " corners joined that lay up to " +
              trimmed(std::max(apart, 1e-6), 6) + " mm apart";
  return mend;
}

}  // namespace brimwright::geometry
