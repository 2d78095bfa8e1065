#include "geometry/repair/shell_forest.h"

#include "geometry/repair/self_crossing.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>

namespace brimwright::geometry {
namespace {

bool overlap(const Box& a, const Box& b) {
  for (std::size_t i = 0; i < 3; ++i)
    if (a.low_mm[i] > b.high_mm[i] || b.low_mm[i] > a.high_mm[i]) return false;
  return true;
}

Box box_of(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& corners) {
  Box box{mesh.vertices_mm[corners[0]], mesh.vertices_mm[corners[0]]};
  for (const std::uint32_t v : corners) {
    for (std::size_t i = 0; i < 3; ++i) {
      box.low_mm[i] = std::min(box.low_mm[i], mesh.vertices_mm[v][i]);
      box.high_mm[i] = std::max(box.high_mm[i], mesh.vertices_mm[v][i]);
    }
  }
  return box;
}

constexpr std::size_t many = 32;  // shells near one: then all its facets are looked at

/// For each shell, those whose boxes overlap its own, and of many no more than it takes to tell.
std::vector<std::vector<std::uint32_t>> near_shells(const std::vector<ShellPlace>& places) {
  std::vector<std::vector<std::uint32_t>> near(places.size());
  for (std::uint32_t a = 0; a < places.size(); ++a) {
    for (std::uint32_t b = 0; b < places.size() && near[a].size() <= many; ++b)
      if (a != b && overlap(places[a].box, places[b].box)) near[a].push_back(b);
  }
  return near;
}

/// Finds the shells that meet, looking only at facets that come into another shell's box.
void find_meetings(const TriangleMesh& mesh, const SurfaceEdges& edges, const std::string& file,
                   ShellForest& forest) {
  const auto near = near_shells(forest.places);
  TriangleMesh part{mesh.vertices_mm, {}};
  SurfaceEdges part_edges{.open = {.edges = 1}, .crowded = {}, .turned = {}, .shell = {}};
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    const std::uint32_t shell = edges.shell[facet];
    const Box box = box_of(mesh, mesh.triangles[facet]);
    if (near[shell].size() <= many &&
        std::none_of(near[shell].begin(), near[shell].end(),
                     [&](std::uint32_t other) { return overlap(box, forest.places[other].box); })) {
      continue;
    }
    part.triangles.push_back(mesh.triangles[facet]);
    part_edges.shell.push_back(shell);
  }
  if (part.triangles.empty()) return;
  const auto crossing = self_crossing(part, part_edges, file);
  if (!crossing) return;
  forest.meeting = crossing->shells;
  forest.first_meeting_mm = crossing->first_mm;
}

std::uint32_t parent_of(const ShellForest& forest, std::uint32_t shell) {
  std::uint32_t parent = ShellForest::none;
  for (const auto& [other, times] : forest.places[shell].around) {
    const std::array<std::uint32_t, 2> pair = {std::min(shell, other), std::max(shell, other)};
    if (std::binary_search(forest.meeting.begin(), forest.meeting.end(), pair)) continue;
    if (parent == ShellForest::none ||
        std::abs(forest.places[other].volume_mm3) < std::abs(forest.places[parent].volume_mm3)) {
      parent = other;
    }
  }
  return parent;
}

}  // namespace

std::uint32_t ShellForest::outermost(std::uint32_t shell) const {
  while (parent[shell] != none) shell = parent[shell];
  return shell;
}

std::size_t ShellForest::depth(std::uint32_t shell) const {
  std::size_t depth = 0;
  for (; parent[shell] != none; shell = parent[shell]) ++depth;
  return depth;
}

std::uint32_t ShellForest::outer(std::uint32_t shell) const {
  return depth(shell) % 2 == 0 ? shell : parent[shell];
}

ShellForest shell_forest(const TriangleMesh& mesh, const SurfaceEdges& edges,
                         const std::string& file) {
  ShellForest forest{.places = shell_places(mesh, edges, file), .parent = {}, .meeting = {}};
  if (forest.places.size() > 1) find_meetings(mesh, edges, file, forest);
  for (std::uint32_t shell = 0; shell < forest.places.size(); ++shell)
    forest.parent.push_back(parent_of(forest, shell));
  return forest;
}

std::vector<TriangleMesh> solids_by_shell(const TriangleMesh& mesh, const SurfaceEdges& edges,
                                          const ShellForest& forest) {
  std::vector<std::uint32_t> outer(edges.shells);
  for (std::uint32_t shell = 0; shell < edges.shells; ++shell) outer[shell] = forest.outer(shell);
  std::vector<TriangleMesh> solids(edges.shells);
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet)
    solids[outer[edges.shell[facet]]].triangles.push_back(mesh.triangles[facet]);
  std::vector<std::uint32_t> number(mesh.vertices_mm.size()),
      owner(number.size(), ShellForest::none);
  for (std::uint32_t shell = 0; shell < edges.shells; ++shell) {
    TriangleMesh& solid = solids[shell];
    for (auto& corners : solid.triangles) {
      for (std::uint32_t& v : corners) {
        if (owner[v] != shell) {
          owner[v] = shell;
          number[v] = static_cast<std::uint32_t>(solid.vertices_mm.size());
          solid.vertices_mm.push_back(mesh.vertices_mm[v]);
        }
        v = number[v];
      }
    }
  }
  return solids;
}

void append(TriangleMesh& mesh, const TriangleMesh& more) {
  const auto first = static_cast<std::uint32_t>(mesh.vertices_mm.size());
  mesh.vertices_mm.insert(mesh.vertices_mm.end(), more.vertices_mm.begin(), more.vertices_mm.end());
  for (const auto& [a, b, c] : more.triangles)
    mesh.triangles.push_back({first + a, first + b, first + c});
}

}  // namespace brimwright::geometry
