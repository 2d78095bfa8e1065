#include "geometry/pockets/pocket_walls.h"

#include "geometry/levels/facet_curve.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/vectors.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace brimwright::geometry {
namespace {

struct LeaningFacet {
  std::uint32_t facet;
  double area;  // of the part below the brim
};

/// Corners with one and the same number hang together by leaning facets.
class Patches {
 public:
  Patches(const TriangleMesh& mesh, std::span<const LeaningFacet> facets) {
    for (const LeaningFacet& f : facets)
      for (const std::uint32_t v : mesh.triangles[f.facet]) corners_.push_back(v);
    std::sort(corners_.begin(), corners_.end());
    corners_.erase(std::unique(corners_.begin(), corners_.end()), corners_.end());
    patches_.grow_to(corners_.size());
    for (const LeaningFacet& f : facets) {
      const auto& [a, b, c] = mesh.triangles[f.facet];
      patches_.unite(number_of(a), number_of(b));
      patches_.unite(number_of(a), number_of(c));
    }
  }
  std::uint32_t patch_of(std::uint32_t corner) { return patches_.root(number_of(corner)); }

 private:
  std::uint32_t number_of(std::uint32_t corner) const {
    const auto at = std::lower_bound(corners_.begin(), corners_.end(), corner);
    return static_cast<std::uint32_t>(at - corners_.begin());
  }
  std::vector<std::uint32_t> corners_;
  DisjointSets patches_;
};

Point normal_of(const TriangleMesh& mesh, std::uint32_t facet) {
  const auto& [ia, ib, ic] = mesh.triangles[facet];
  return doubled_area(mesh.vertices_mm[ia], mesh.vertices_mm[ib], mesh.vertices_mm[ic]);
}

/// How much of a facet's area is below the brim.
double share_below(const TriangleMesh& mesh, std::uint32_t facet, double brim_mm) {
  FacetCurve::Facet heights = FacetCurve::facet_of(mesh, facet, brim_mm);
  heights.area = 1;
  return heights.z1 < 0 ? FacetCurve::below(heights, 0).surface_mm2 : 0;
}

std::vector<LeaningPatch> patches_of(const TriangleMesh& mesh,
                                     std::span<const LeaningFacet> facets) {
  Patches patches(mesh, facets);
  std::map<std::uint32_t, std::pair<double, LeaningFacet>> found;  // total, and the largest facet
  for (const LeaningFacet& f : facets) {
    auto& [total, largest] =
        found.try_emplace(patches.patch_of(mesh.triangles[f.facet][0]), 0, f).first->second;
    total += f.area;
    if (f.area > largest.area) largest = f;
  }
  std::vector<LeaningPatch> list;
  for (const auto& [patch, entry] : found) {
    Point middle{};
    for (const std::uint32_t v : mesh.triangles[entry.second.facet])
      for (std::size_t i = 0; i < 3; ++i) middle[i] += mesh.vertices_mm[v][i] / 3;
    list.push_back({middle, entry.first});
  }
  std::stable_sort(list.begin(), list.end(), [](const LeaningPatch& a, const LeaningPatch& b) {
    return a.area_mm2 > b.area_mm2;
  });
  return list;
}

}  // namespace

PocketWall wall_of(const AirSurface& surface, std::span<const std::uint32_t> facets,
                   double brim_mm) {
  const TriangleMesh& mesh = surface.mesh();
  std::array<double, 2> low = {HUGE_VAL, HUGE_VAL}, high = {-HUGE_VAL, -HUGE_VAL};
  PocketWall wall{};
  std::vector<LeaningFacet> leaning;
  for (const std::uint32_t facet : facets) {
    for (const std::uint32_t v : mesh.triangles[facet]) {
      if (mesh.vertices_mm[v][2] > brim_mm) continue;
      for (std::size_t i = 0; i < 2; ++i) {
        low[i] = std::min(low[i], mesh.vertices_mm[v][i]);
        high[i] = std::max(high[i], mesh.vertices_mm[v][i]);
      }
    }
    const Point normal = normal_of(mesh, facet);
    if (normal[2] >= 0) continue;
    const double share = share_below(mesh, facet, brim_mm);
    const double doubled_area = std::hypot(normal[0], normal[1], normal[2]);
    wall.roofed_mm2 -= normal[2] / 2 * share;
    if (-normal[2] > least_lean * doubled_area && share > 0)
      leaning.push_back({facet, doubled_area / 2 * share});
  }
  wall.middle_mm = {(low[0] + high[0]) / 2, (low[1] + high[1]) / 2};
  wall.leaning = patches_of(mesh, leaning);
  return wall;
}

}  // namespace brimwright::geometry
