#include "geometry/repair/mesh_inspection.h"

#include "geometry/repair/mesh_mending.h"
#include "geometry/repair/self_crossing.h"
#include "geometry/repair/shell_forest.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/parallel.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"

#include <algorithm>
#include <cstdint>
#include <string_view>
#include <utility>

namespace brimwright::geometry {
namespace {

struct Wording {
  std::string_view one, many;
};

Wording wording_of(Flaw flaw) {
  switch (flaw) {
    case Flaw::unshared_corners:
      return {"corner lies a little beside the one it belongs to",
              "corners lie a little beside those they belong to"};
    case Flaw::collapsed_facets:
      return {"facet has no area", "facets have no area"};
    case Flaw::duplicate_facets:
      return {"facet lies on another with the same corners",
              "facets lie on others with the same corners"};
    case Flaw::slits:
      return {"corner lies in the middle of another facet's edge, beside a slit",
              "corners lie in the middle of other facets' edges, beside slits"};
    case Flaw::turned_facets:
      return {"facet shows the back where its neighbours show the front",
              "facets show the back where their neighbours show the front"};
    case Flaw::scraps:
      return {"facet is a loose scrap", "facets are loose scraps"};
    case Flaw::holes:
      return {"hole is left where facets are missing", "holes are left where facets are missing"};
    case Flaw::inside_out:
      return {"part is inside out", "parts are inside out"};
    case Flaw::nested_parts:
      return {"part lies inside another that faces the same way",
              "parts lie inside others that face the same way"};
    case Flaw::overlapping_parts:
      return {"pair of parts overlaps or touches", "pairs of parts overlap or touch"};
    case Flaw::crossing:
      return {"pair of facets runs through each other", "pairs of facets run through each other"};
    case Flaw::open_edges:
      return {"edge has a facet on one side only", "edges have a facet on one side only"};
    case Flaw::crowded_edges:
      return {"edge has more than two facets", "edges have more than two facets"};
  }
  return {};
}

Defect defect(Flaw flaw, std::size_t count, const Vector& first) {
  const Wording wording = wording_of(flaw);
  return {
      .kind = flaw,
      .count = count,
      .first_mm = first,
      .what = std::to_string(count) + " " + std::string(count == 1 ? wording.one : wording.many)};
}

/// Facets of three corners in line, which mending leaves where they are in a closed surface.
void list_flat_facets(const TriangleMesh& mesh, std::vector<Defect>& defects) {
  const auto [low, high] = bounding_box(mesh);
  const double flat_mm = 1e-7 * length(high - low);  // the step of single precision
  struct Part {
    std::size_t count = 0, first = 0;
  };
  const auto parts = in_parts<Part>(mesh.triangles.size(), [=, triangles = mesh.triangles.data(),
                                                            vertices = mesh.vertices_mm.data()](
                                                               std::size_t facet, Part& part) {
    const auto& corners = triangles[facet];
    const Vector &a = vertices[corners[0]], &b = vertices[corners[1]], &c = vertices[corners[2]];
    const Vector doubled = doubled_area(a, b, c);
    const double longest =
        std::max(std::max(dot(b - a, b - a), dot(c - b, c - b)), dot(a - c, a - c));
    if (dot(doubled, doubled) <= flat_mm * flat_mm * longest && part.count++ == 0)
      part.first = facet;
  });
  Part all;
  for (const Part& part : parts) {
    if (all.count == 0) all.first = part.first;
    all.count += part.count;
  }
  if (all.count == 0) return;
  defects.push_back(
      defect(Flaw::collapsed_facets, all.count, middle_of(mesh, mesh.triangles[all.first])));
}

void list_edge_faults(const EdgeFaults& edges, std::vector<Defect>& defects) {
  if (edges.open.edges > 0)
    defects.push_back(defect(Flaw::open_edges, edges.open.edges, edges.open.first_mm));
  if (edges.crowded.edges > 0)
    defects.push_back(defect(Flaw::crowded_edges, edges.crowded.edges, edges.crowded.first_mm));
}

/// Nesting, facing and overlap of the shells of a closed surface.
void list_shell_faults(const TriangleMesh& mesh, const SurfaceEdges& edges, const std::string& file,
                       std::vector<Defect>& defects) {
  if (edges.shells == 1) {
    if (enclosed_volume(mesh) < Volume())
      defects.push_back(defect(Flaw::inside_out, 1, mesh.vertices_mm.front()));
    return;
  }
  const ShellForest forest = shell_forest(mesh, edges, file);
  std::vector<std::uint32_t> inward, nested;
  for (std::uint32_t shell = 0; shell < edges.shells; ++shell) {
    const std::uint32_t parent = forest.parent[shell];
    if (parent == ShellForest::none) {
      if (forest.faces_inward(shell)) inward.push_back(shell);
    } else if (forest.faces_inward(shell) == forest.faces_inward(parent)) {
      nested.push_back(shell);
    }
  }
  for (const auto& [flaw, shells] :
       {std::pair{Flaw::inside_out, inward}, std::pair{Flaw::nested_parts, nested}}) {
    if (shells.empty()) continue;
    defects.push_back(defect(flaw, shells.size(), forest.places[shells.front()].corner_mm));
  }
  if (!forest.meeting.empty())
    defects.push_back(
        defect(Flaw::overlapping_parts, forest.meeting.size(), forest.first_meeting_mm));
}

void list_crossings(const TriangleMesh& mesh, const SurfaceEdges& edges, const std::string& file,
                    std::vector<Defect>& defects) {
  const auto crossing = self_crossing(mesh, edges, file);
  if (crossing) defects.push_back(defect(Flaw::crossing, crossing->pairs, crossing->first_mm));
}

}  // namespace

Inspection inspected_welded(TriangleMesh surface, InspectFor what, const std::string& file) {
  Inspection found{.facets = surface.triangles.size()};
  const MendedSurface mended = mend_surface(surface);
  const EdgeFaults& edges = mended.before;  // what the file itself has
  found.closed = edges.open.edges == 0 && edges.crowded.edges == 0;
  found.facing_consistently = edges.turned.edges == 0;
  found.open_edges = edges.open.edges;
  found.shells = mended.edges.shells;
  for (const Mend& mend : mended.mends)
    found.defects.push_back(defect(mend.flaw, mend.count, mend.first_mm));
  if (surface.triangles.empty()) return found;
  list_flat_facets(surface, found.defects);
  list_edge_faults(edges, found.defects);
  std::vector<Rim> rims = mended.edges.open.edges == 0 ? std::vector<Rim>() : rims_of(surface);
  found.rims = rims.size();
  if (!rims.empty()) found.widest_rim = std::move(rims.front());
  const bool whole = mended.edges.open.edges + mended.edges.crowded.edges == 0;
  if (whole && mended.edges.turned.edges == 0)
    list_shell_faults(surface, mended.edges, file, found.defects);
  if (what == InspectFor::defects_and_crossings)
    list_crossings(surface, mended.edges, file, found.defects);
  return found;
}

Inspection inspected(const TriangleMesh& mesh, InspectFor what, const std::string& file) {
  return inspected_welded(welded(mesh), what, file);
}

}  // namespace brimwright::geometry
