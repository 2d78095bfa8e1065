#include "geometry/repair/mend_facets.h"

#include "geometry/repair/facet_neighbours.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"

#include <algorithm>
#include <string>
#include <utility>

namespace brimwright::geometry {
namespace {

using Corners = std::array<std::uint32_t, 3>;

/// Leaves away the facets marked, and tells of them.
std::optional<Mend> without(TriangleMesh& mesh, const std::vector<bool>& goes, Mend mend) {
  std::size_t kept = 0;
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    if (!goes[facet]) {
      mesh.triangles[kept++] = mesh.triangles[facet];
    } else if (mend.count++ == 0) {
      mend.first_mm = middle_of(mesh, mesh.triangles[facet]);
    }
  }
  if (mend.count == 0) return std::nullopt;
  mesh.triangles.resize(kept);
  drop_unused_vertices(mesh);
  mend.what = std::to_string(mend.count) + (mend.count == 1 ? " facet " : " facets ") + mend.what;
  return mend;
}

/// A facet's corners in ascending order, and whether they go round that way.
struct Key {
  Corners corners;
  bool forwards;
  std::uint32_t facet;
};

Key key_of(const Corners& corners, std::uint32_t facet) {
  Corners sorted = corners;
  std::sort(sorted.begin(), sorted.end());
  const auto lowest =
      static_cast<std::size_t>(std::min_element(corners.begin(), corners.end()) - corners.begin());
  return {sorted, corners[(lowest + 1) % 3] == sorted[1], facet};
}

/// Facets with the same corners, one group after the other.
std::vector<std::vector<Key>> groups_of_equals(const TriangleMesh& mesh) {
  std::vector<Key> keys;
  for (std::uint32_t facet = 0; facet < mesh.triangles.size(); ++facet)
    keys.push_back(key_of(mesh.triangles[facet], facet));
  std::sort(keys.begin(), keys.end(), [](const Key& a, const Key& b) {
    return a.corners != b.corners ? a.corners < b.corners : a.facet < b.facet;
  });
  std::vector<std::vector<Key>> groups;
  for (const Key& key : keys) {
    if (groups.empty() || groups.back().front().corners != key.corners) groups.emplace_back();
    groups.back().push_back(key);
  }
  return groups;
}

bool has_both_sides(const std::vector<Key>& group) {
  return std::any_of(group.begin(), group.end(),
                     [&](const Key& key) { return key.forwards != group.front().forwards; });
}

/// What hangs together by edges of two facets.
struct Sheet {
  double area_mm2 = 0;
  bool is_open = false;
  Vector low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
};

std::vector<Sheet> sheets_of(const TriangleMesh& mesh, const SurfaceEdges& edges) {
  const FacetNeighbours neighbours(mesh);
  std::vector<Sheet> sheets(edges.shells);
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    Sheet& sheet = sheets[edges.shell[facet]];
    sheet.area_mm2 += area_mm2(mesh, mesh.triangles[facet]);
    for (std::size_t i = 0; i < 3; ++i) {
      sheet.is_open |= neighbours.across(facet, i) == FacetNeighbours::open;
      const Vector& corner = mesh.vertices_mm[mesh.triangles[facet][i]];
      for (std::size_t k = 0; k < 3; ++k) {
        sheet.low[k] = std::min(sheet.low[k], corner[k]);
        sheet.high[k] = std::max(sheet.high[k], corner[k]);
      }
    }
  }
  return sheets;
}

bool is_cap(const TriangleMesh& mesh, const Corners& corners, double flat_mm) {
  Point sides{};
  for (std::size_t i = 0; i < 3; ++i)
    sides[i] = length(mesh.vertices_mm[corners[(i + 1) % 3]] - mesh.vertices_mm[corners[i]]);
  std::sort(sides.begin(), sides.end());
  // With a short side it is a needle, whose two ends are for the weld to join.
  return sides[0] > 10 * flat_mm && 2 * area_mm2(mesh, corners) <= flat_mm * sides[2];
}

}  // namespace

std::optional<Mend> drop_collapsed(TriangleMesh& mesh) {
  const auto found = in_parts<char>(
      mesh.triangles.size(), [triangles = mesh.triangles.data()](std::size_t facet, char& any) {
        const auto& [a, b, c] = triangles[facet];
        if (a == b || b == c || c == a) any = 1;
      });
  if (std::find(found.begin(), found.end(), char{1}) == found.end()) return std::nullopt;
  std::vector<bool> goes(mesh.triangles.size(), false);
  for (std::size_t facet = 0; facet < goes.size(); ++facet) {
    const auto& [a, b, c] = mesh.triangles[facet];
    goes[facet] = a == b || b == c || c == a;
  }
  return without(mesh, goes,
                 {.flaw = Flaw::collapsed_facets,
                  .what = "without area left out, with two corners in one place",
                  .bound = {}});
}

std::optional<Mend> drop_duplicates(TriangleMesh& mesh) {
  const auto groups = groups_of_equals(mesh);
  const bool two_sided = std::all_of(groups.begin(), groups.end(), has_both_sides);
  std::vector<bool> goes(mesh.triangles.size(), false);
  for (const std::vector<Key>& group : groups) {
    const bool both = has_both_sides(group) && !two_sided;
    const auto forwards =
        std::count_if(group.begin(), group.end(), [](const Key& key) { return key.forwards; });
    const auto backwards = static_cast<std::ptrdiff_t>(group.size()) - forwards;
    const bool none_stays = both && forwards == backwards;
    // The first of the side with more facets stays, so that a front outlives a pair added to it.
    const bool side = both ? forwards > backwards : group.front().forwards;
    bool kept = none_stays;
    for (const Key& key : group) {
      goes[key.facet] = kept || key.forwards != side;
      kept |= !goes[key.facet];
    }
  }
  return without(mesh, goes,
                 {.flaw = Flaw::duplicate_facets,
                  .what = "left out that lay on others with the same corners",
                  .bound = {}});
}

std::optional<Mend> drop_flat(TriangleMesh& mesh, double flat_mm) {
  std::vector<bool> goes(mesh.triangles.size(), false);
  Mend mend{.flaw = Flaw::collapsed_facets,
            .what = "without area left out, with three corners in line",
            .bound = {}};
  for (std::size_t facet = 0; facet < goes.size(); ++facet) {
    goes[facet] = is_cap(mesh, mesh.triangles[facet], flat_mm);
    if (goes[facet])
      mend.bound += area_mm2(mesh, mesh.triangles[facet]) * flat_mm * cubic_millimetre;
  }
  return without(mesh, goes, std::move(mend));
}

std::optional<Mend> drop_scraps(TriangleMesh& mesh) {
  constexpr double most_of_one = 0.001, most_of_all = 0.01;  // our own bounds
  const SurfaceEdges edges = surface_edges(mesh);
  if (edges.shells < 2) return std::nullopt;
  const std::vector<Sheet> sheets = sheets_of(mesh, edges);
  double whole = 0, loose = 0;
  for (const Sheet& sheet : sheets) whole += sheet.area_mm2;
  const auto is_scrap = [&](const Sheet& sheet) {
    return sheet.is_open && sheet.area_mm2 < most_of_one * whole;
  };
  Mend mend{
      .flaw = Flaw::scraps, .what = "left out in loose scraps that enclose nothing", .bound = {}};
  for (const Sheet& sheet : sheets) {
    if (!is_scrap(sheet)) continue;
    loose += sheet.area_mm2;
    mend.bound += sheet.area_mm2 * length(sheet.high - sheet.low) * cubic_millimetre;
  }
  if (loose > most_of_all * whole) return std::nullopt;
  std::vector<bool> goes(mesh.triangles.size());
  for (std::size_t facet = 0; facet < goes.size(); ++facet)
    goes[facet] = is_scrap(sheets[edges.shell[facet]]);
  return without(mesh, goes, std::move(mend));
}

}  // namespace brimwright::geometry
