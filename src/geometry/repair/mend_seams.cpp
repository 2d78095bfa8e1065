#include "geometry/repair/mend_seams.h"

#include "geometry/repair/facet_neighbours.h"
#include "geometry/repair/point_tree.h"
#include "geometry/surface/vectors.h"
#include "units/printing.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

/// Border vertices, to be looked up by place.
class Border {
 public:
  Border(const TriangleMesh& mesh, const FacetNeighbours& neighbours)
      : mesh_(mesh), vertices_(neighbours.border_vertices(mesh)), tree_(points()) {}

  /// Those strictly between a and b and on the line to within `reach`, from a to b.
  std::vector<std::uint32_t> between(std::uint32_t a, std::uint32_t b, std::uint32_t not_c,
                                     double reach) const {
    const Vector& from = mesh_.vertices_mm[a];
    const Vector& to = mesh_.vertices_mm[b];
    std::vector<std::uint32_t> found;
    tree_.for_each_near(from, to, reach, [&](std::uint32_t number) {
      const std::uint32_t v = vertices_[number];
      if (v == a || v == b || v == not_c) return;
      const Vector& p = mesh_.vertices_mm[v];
      if (length(p - from) > reach && length(p - to) > reach) found.push_back(v);
    });
    std::sort(found.begin(), found.end(), [&](std::uint32_t v, std::uint32_t w) {
      return dot(mesh_.vertices_mm[v] - mesh_.vertices_mm[w], to - from) < 0;
    });
    return found;
  }

  std::size_t size() const { return vertices_.size(); }

 private:
  std::vector<Vector> points() const {
    std::vector<Vector> points;
    for (const std::uint32_t v : vertices_) points.push_back(mesh_.vertices_mm[v]);
    return points;
  }

  const TriangleMesh& mesh_;
  std::vector<std::uint32_t> vertices_;
  PointTree tree_;
};

/// The corners on each edge of a facet, from each of its own corners to the next.
using OnEdges = std::array<std::vector<std::uint32_t>, 3>;

/// Cuts the triangle a b c by fans from the corner across each edge with corners on it. New edges
/// run inside the triangle, so that one go is enough.
void cut(const std::array<std::uint32_t, 3>& triangle, OnEdges on,
         std::vector<std::array<std::uint32_t, 3>>& pieces) {
  for (std::size_t i = 0; i < 3; ++i) {
    if (on[i].empty()) continue;
    const std::uint32_t a = triangle[i], b = triangle[(i + 1) % 3], c = triangle[(i + 2) % 3];
    const std::vector<std::uint32_t>& between = on[i];
    for (std::size_t k = 0; k + 1 < between.size(); ++k)
      pieces.push_back({between[k], between[k + 1], c});
    cut({a, between.front(), c}, {{{}, {}, on[(i + 2) % 3]}}, pieces);
    cut({between.back(), b, c}, {{{}, on[(i + 1) % 3], {}}}, pieces);
    return;
  }
  pieces.push_back(triangle);
}

/// What lies on the open edges of a facet.
OnEdges corners_on(const TriangleMesh& mesh, const FacetNeighbours& neighbours,
                   const Border& border, std::size_t facet, double reach) {
  OnEdges on;
  const auto& corners = mesh.triangles[facet];
  for (std::size_t i = 0; i < 3; ++i) {
    if (neighbours.across(facet, i) != FacetNeighbours::open) continue;
    on[i] = border.between(corners[i], corners[(i + 1) % 3], corners[(i + 2) % 3], reach);
  }
  return on;
}

}  // namespace

std::optional<Mend> split_seams(TriangleMesh& mesh, double reach_mm) {
  const FacetNeighbours neighbours(mesh);
  const Border border(mesh, neighbours);
  Mend mend{.flaw = Flaw::slits, .what = {}, .bound = {}};
  double farthest = 0;
  // A corner lies on few edges, unless a thousand slits lie on one line; our own bound.
  const std::size_t most_cuts = 10'000 + 8 * border.size();
  std::vector<std::array<std::uint32_t, 3>> pieces;
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    const OnEdges on = corners_on(mesh, neighbours, border, facet, reach_mm);
    double off = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      const Vector& a = mesh.vertices_mm[mesh.triangles[facet][i]];
      const Vector& b = mesh.vertices_mm[mesh.triangles[facet][(i + 1) % 3]];
      for (const std::uint32_t v : on[i]) {
        off = std::max(off, distance_mm(mesh.vertices_mm[v], a, b));
        if (mend.count++ == 0) mend.first_mm = mesh.vertices_mm[v];
      }
    }
    farthest = std::max(farthest, off);
    mend.bound += area_mm2(mesh, mesh.triangles[facet]) * off * cubic_millimetre;
    if (mend.count > most_cuts) return std::nullopt;
    cut(mesh.triangles[facet], on, pieces);
  }
  if (mend.count == 0) return std::nullopt;
  mesh.triangles = std::move(pieces);
  mend.what = "slits closed where " + std::to_string(mend.count) +
              (mend.count == 1 ? " corner lay" : " corners lay") +
              " in the middle of another facet's edge, up to " +
              trimmed(std::max(farthest, 1e-6), 6) + " mm beside it";
  return mend;
}

}  // namespace brimwright::geometry
