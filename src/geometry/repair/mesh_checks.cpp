#include "geometry/repair/mesh_checks.h"

#include "geometry/files/mesh_file.h"
#include "geometry/repair/self_crossing.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/shell_nesting.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/weld.h"
#include "units/printing.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr const char* repair = "repair it in the modelling program and export it again";

[[noreturn]] void refuse(const std::string& file, const std::string& field,
                         const std::string& problem, const std::string& remedy = repair) {
  throw UserError({.file = file, .field = field, .problem = problem, .remedy = remedy});
}

[[noreturn]] void refuse_at(const Point& at_mm, const std::string& file, const std::string& problem,
                            const std::string& remedy = repair) {
  throw PlacedError(
      {.file = file, .field = place_text(at_mm), .problem = problem, .remedy = remedy}, at_mm);
}

void refuse_flat(const TriangleMesh& mesh, const std::string& file) {
  constexpr std::array names = {"x", "y", "z"};
  const Box box = bounding_box(mesh);
  for (std::size_t i = 0; i < 3; ++i) {
    if (box.high_mm[i] > box.low_mm[i]) continue;
    refuse(file, "", std::string("is flat: it has no size along ") + names[i],
           "give the solid that is to be filled, not a drawing of one side of it");
  }
}

void refuse_unsound_edges(const SurfaceEdges& edges, const std::string& file) {
  if (const EdgeFault& open = edges.open; open.edges > 0)
    refuse_at(open.first_mm, file,
              "is open: " + counted(open.edges, "edge has", "edges have") +
                  " a facet on one side only, the first here",
              "close the surface in the modelling program and export it again");
  if (const EdgeFault& crowded = edges.crowded; crowded.edges > 0)
    refuse_at(crowded.first_mm, file,
              "does not bound one solid: more than two facets meet at " +
                  counted(crowded.edges, "edge") + ", the first here");
  if (const EdgeFault& turned = edges.turned; turned.edges > 0)
    refuse_at(turned.first_mm, file,
              "has facets turned against their neighbours at " + counted(turned.edges, "edge") +
                  ", the first here",
              "make all facets face outward in the modelling program and export it again");
}

double diagonal_mm(const TriangleMesh& mesh) {
  const auto [low, high] = bounding_box(mesh);
  return std::hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
}

[[noreturn]] void refuse_nothing_enclosed(const std::string& file) {
  refuse(file, "", "encloses no volume", "give the solid that is to be filled");
}

/// Turns a surface that faces inward; refuses one that encloses nothing.
void face_outward(CheckedSolid& checked, const std::string& file) {
  const double volume = enclosed_volume(checked.solid) / cubic_millimetre;
  // What rounding leaves of a sheet with two sides: each term has at most the diagonal's cube, and
  // errors of single precision, in which most meshes are stored, are 1e-7 of a coordinate.
  if (std::abs(volume) <= 1e-9 * std::pow(diagonal_mm(checked.solid), 3))
    refuse_nothing_enclosed(file);
  if (volume > 0) return;
  for (auto& corners : checked.solid.triangles) std::swap(corners[1], corners[2]);
  checked.remarks.push_back(
      {Severity::note, file + " was inside out; its facets were turned to face outward"});
}

/// Refuses a surface that crosses itself, and lets pass one whose facets graze each other by no
/// more than the last digits of its coordinates, as exported slivers do.
void refuse_crossing(CheckedSolid& checked, const SurfaceEdges& edges, const std::string& file) {
  const auto crossing = self_crossing(checked.solid, edges, file);
  if (!crossing) return;
  const std::string pairs = counted(crossing->pairs, "pair") + " of facets";
  if (crossing->between_shells)
    refuse_at(crossing->first_mm, file,
              "has parts that overlap or touch: " + pairs + " meet, the first here",
              "unite the parts into one solid in the modelling program and export it again");
  // Ten times the step of single precision (6e-8) times the diagonal: far below a maker's line.
  const double harmless_mm = 1e-6 * diagonal_mm(checked.solid);
  if (crossing->deepest_mm > harmless_mm)
    refuse_at(crossing->first_mm, file,
              "has a surface that crosses itself: " + pairs + " meet, the first here");
  checked.remarks.push_back({Severity::note, file + " has " + pairs +
                                                 " that graze each other by less than " +
                                                 trimmed(std::max(harmless_mm, 1e-6), 6) +
                                                 " mm, which does not show in its volume"});
}

void refuse_misplaced_shell(const TriangleMesh& solid, const SurfaceEdges& edges,
                            const std::string& file) {
  const auto shell = misplaced_shell(solid, edges, file);
  if (!shell) return;
  if (shell->kind == MisplacedShell::Kind::inside_out)
    refuse_at(shell->corner_mm, file, "has a part here that is inside out, unlike the others",
              "make all facets face outward in the modelling program and export it again");
  refuse_at(shell->corner_mm, file, "has a part here that lies inside another",
            "unite the parts into one solid, or cut the inner one out, and export it again");
}

}  // namespace

void refuse_unsound_numbers(const TriangleMesh& mesh, const std::string& file) {
  if (mesh.triangles.empty())
    refuse(file, "", "holds no facets", "export the shape as a solid mesh");
  for (std::size_t facet = 0; facet < mesh.triangles.size(); ++facet) {
    const auto field = [&] { return "facet " + std::to_string(facet + 1); };
    for (const std::uint32_t corner : mesh.triangles[facet]) {
      if (corner >= mesh.vertices_mm.size())
        refuse(file, field(), "has a corner that is not there");
      const auto& [x, y, z] = mesh.vertices_mm[corner];
      if (!std::isfinite(x) || !std::isfinite(y) || !std::isfinite(z))
        refuse(file, field(), "has a corner that is not a number");
    }
  }
}

CheckedSolid checked_solid(const TriangleMesh& mesh, const std::string& file) {
  refuse_unsound_numbers(mesh, file);
  TriangleMesh solid = welded(mesh);
  refuse_flat(solid, file);
  std::vector<Remark> remarks;
  if (const std::size_t dropped = drop_collapsed_facets(solid); dropped > 0) {
    drop_unused_vertices(solid);
    if (solid.triangles.empty()) refuse_nothing_enclosed(file);
    remarks.push_back({Severity::note, file + ": " + counted(dropped, "facet") +
                                           " without area left out, with two corners in one "
                                           "place"});
  }
  SurfaceEdges edges = surface_edges(solid);
  CheckedSolid checked = checked_welded(std::move(solid), std::move(edges), file);
  checked.remarks.insert(checked.remarks.begin(), remarks.begin(), remarks.end());
  return checked;
}

CheckedSolid checked_welded(TriangleMesh mesh, SurfaceEdges edges, const std::string& file) {
  refuse_flat(mesh, file);
  CheckedSolid checked{.solid = std::move(mesh), .remarks = {}, .edges = std::move(edges)};
  refuse_unsound_edges(checked.edges, file);
  face_outward(checked, file);
  refuse_crossing(checked, checked.edges, file);
  refuse_misplaced_shell(checked.solid, checked.edges, file);
  return checked;
}

}  // namespace brimwright::geometry
