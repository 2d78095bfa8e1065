#include "geometry/repair/mend_shells.h"

#include "geometry/exact/shell_union.h"
#include "geometry/files/mesh_file.h"
#include "geometry/repair/mend_touching.h"
#include "geometry/repair/shell_forest.h"
#include "geometry/surface/disjoint_sets.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"
#include "units/printing.h"
#include "units/user_error.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

[[noreturn]] void refuse(const std::string& file, const Vector& place_mm,
                         const std::string& problem, const std::string& remedy) {
  throw PlacedError(
      {.file = file, .field = place_text(place_mm), .problem = problem, .remedy = remedy},
      place_mm);
}

/// A closed surface while its shells are being put right.
class ShellMending {
 public:
  ShellMending(TriangleMesh mesh, SurfaceEdges edges, const std::string& file)
      : file_(file),
        mesh_(std::move(mesh)),
        edges_(std::move(edges)),
        forest_(shell_forest(mesh_, edges_, file)) {}

  void drop_specks();
  void refuse_doubtful_nesting() const;
  void refuse_doubtful_crossing() const;
  void face_outward();
  void unite();
  bool has_united() const { return has_united_; }
  ShellMends result() && { return {std::move(mesh_), std::move(mends_)}; }

 private:
  void look_again() {
    edges_ = surface_edges(mesh_);
    forest_ = shell_forest(mesh_, edges_, file_);
  }
  bool doubtful(std::uint32_t shell) const {
    const std::uint32_t parent = forest_.parent[shell];
    return parent != ShellForest::none &&
           forest_.faces_inward(shell) == forest_.faces_inward(parent);
  }
  double volume_mm3(std::uint32_t shell) const { return forest_.places[shell].volume_mm3; }
  std::vector<std::vector<std::uint32_t>> groups_of_parts() const;

  const std::string& file_;
  TriangleMesh mesh_;
  SurfaceEdges edges_;
  ShellForest forest_;
  std::vector<Mend> mends_;
  bool has_united_ = false;
};

/// Leaves away parts inside others, facing the same way, too small to matter whatever they are.
void ShellMending::drop_specks() {
  constexpr double speck = 1e-3;  // of the part around it; our own bound
  Mend mend{.flaw = Flaw::nested_parts, .what = {}, .bound = {}};
  std::vector<bool> goes(edges_.shells, false);
  for (std::uint32_t shell = 0; shell < edges_.shells; ++shell) {
    if (!doubtful(shell)) continue;
    const double volume = std::abs(volume_mm3(shell));
    if (volume > speck * std::abs(volume_mm3(forest_.parent[shell]))) continue;
    goes[shell] = true;
    if (mend.count++ == 0) mend.first_mm = forest_.places[shell].corner_mm;
    mend.bound += volume * cubic_millimetre;
  }
  if (mend.count == 0) return;
  mend.what = std::to_string(mend.count) + (mend.count == 1 ? " speck" : " specks") +
              " inside another part left out";
  mends_.push_back(std::move(mend));
  std::size_t facet = 0;
  std::erase_if(mesh_.triangles, [&](const auto&) { return goes[edges_.shell[facet++]]; });
  drop_unused_vertices(mesh_);
  look_again();
}

void ShellMending::refuse_doubtful_nesting() const {
  for (std::uint32_t shell = 0; shell < edges_.shells; ++shell) {
    if (!doubtful(shell)) continue;
    const Volume around = std::abs(volume_mm3(forest_.parent[shell])) * cubic_millimetre;
    const Volume inner = std::abs(volume_mm3(shell)) * cubic_millimetre;
    refuse(file_, forest_.places[shell].corner_mm,
           "has a part of " + in_ml(inner, 3) +
               " inside another that faces the same way: if it is a hollow, " +
               in_ml(abs(around - inner), 3) + " are left around it, if not, " + in_ml(around, 3),
           "turn its facets to face inward if it is a hollow, or take it out if it is not, in the "
           "modelling program");
  }
}

void ShellMending::refuse_doubtful_crossing() const {
  for (const auto& [a, b] : forest_.meeting) {
    if (forest_.outer(a) == forest_.outer(b))
      refuse(file_, forest_.first_meeting_mm, "has a hollow that crosses the surface around it",
             "repair it in the modelling program and export it again");
    if (forest_.faces_inward(forest_.outermost(a)) != forest_.faces_inward(forest_.outermost(b)))
      refuse(file_, forest_.first_meeting_mm,
             "has parts that overlap, the first here, of which one is inside out",
             "make all facets face outward and unite the parts in the modelling program");
  }
}

/// Turns whole parts with all that is in them; by now what lies in each other faces in turn.
void ShellMending::face_outward() {
  Mend mend{.flaw = Flaw::inside_out, .what = {}, .bound = {}};
  std::vector<bool> turns(edges_.shells, false);
  std::size_t outermost = 0;
  for (std::uint32_t shell = 0; shell < edges_.shells; ++shell) {
    turns[shell] = forest_.faces_inward(forest_.outermost(shell));
    if (forest_.parent[shell] != ShellForest::none) continue;
    ++outermost;
    if (turns[shell] && mend.count++ == 0) mend.first_mm = forest_.places[shell].corner_mm;
  }
  if (mend.count == 0) return;
  for (std::size_t facet = 0; facet < mesh_.triangles.size(); ++facet)
    if (turns[edges_.shell[facet]]) std::swap(mesh_.triangles[facet][1], mesh_.triangles[facet][2]);
  for (std::uint32_t shell = 0; shell < edges_.shells; ++shell)
    if (turns[shell]) forest_.places[shell].volume_mm3 *= -1;
  mend.what = mend.count == outermost
                  ? "the whole surface was inside out; its facets were turned to face outward"
                  : std::to_string(mend.count) + " of " + std::to_string(outermost) +
                        " parts inside out; their facets were turned to face outward";
  mends_.push_back(std::move(mend));
}

/// The outer shells of solids that hang together by meeting, group by group.
std::vector<std::vector<std::uint32_t>> ShellMending::groups_of_parts() const {
  DisjointSets group(edges_.shells);
  for (const auto& [a, b] : forest_.meeting) group.unite(forest_.outer(a), forest_.outer(b));
  std::vector<std::vector<std::uint32_t>> groups(edges_.shells);
  for (std::uint32_t shell = 0; shell < edges_.shells; ++shell)
    if (forest_.outer(shell) == shell) groups[group.root(shell)].push_back(shell);
  std::erase_if(groups, [](const auto& parts) { return parts.empty(); });
  return groups;
}

std::string union_told(std::size_t parts, std::size_t swallowed, Volume twice) {
  std::string told = std::to_string(parts) + " parts that overlap or touch united; " +
                     in_ml(twice, 3) + " had been in more than one of them";
  if (swallowed > 0)
    told += ", and " + std::to_string(swallowed) +
            " of them lay wholly inside the others and were taken as solid";
  return told;
}

/// What rounding the new corners can do: the surface times the step of a double at the farthest
/// coordinate, 1.1e-16 of it, with a factor of ten for corners of sharp crossings.
Volume rounding_bound(const TriangleMesh& mesh) {
  double area = 0, farthest = 0;
  for (const auto& corners : mesh.triangles) area += area_mm2(mesh, corners);
  for (const Vector& p : mesh.vertices_mm) farthest = std::max(farthest, length(p));
  return area * farthest * 1.1e-15 * cubic_millimetre;
}

void ShellMending::unite() {
  if (forest_.meeting.empty()) return;
  const std::vector<TriangleMesh> solids = solids_by_shell(mesh_, edges_, forest_);
  const std::vector<std::vector<std::uint32_t>> groups = groups_of_parts();
  const Volume added_up = enclosed_volume(mesh_);
  Mend mend{.flaw = Flaw::overlapping_parts,
            .what = {},
            .first_mm = forest_.first_meeting_mm,
            .bound = {}};
  std::size_t swallowed = 0;
  TriangleMesh whole;
  UnionBudget budget(mesh_.triangles.size());
  for (const std::vector<std::uint32_t>& group : groups) {
    if (group.size() == 1) {
      append(whole, solids[group.front()]);
      continue;
    }
    std::vector<TriangleMesh> meeting;
    for (const std::uint32_t outer : group) meeting.push_back(solids[outer]);
    const UnitedSolid joined = united(meeting, budget, forest_.first_meeting_mm, file_);
    append(whole, joined.solid);
    mend.count += group.size();
    swallowed += joined.swallowed;
    mend.bound += joined.swallowed_mm3 * cubic_millimetre;
  }
  mesh_ = welded(whole);
  drop_collapsed_facets(mesh_);
  mend.what = union_told(mend.count, swallowed, abs(added_up - enclosed_volume(mesh_)));
  mend.bound += rounding_bound(mesh_);
  mends_.push_back(std::move(mend));
  has_united_ = true;
}

[[noreturn]] void refuse_crowded(const EdgeFault& crowded, const std::string& file) {
  refuse(file, crowded.first_mm,
         "does not bound one solid: more than two facets meet at " +
             counted(crowded.edges, "edge") + ", the first here",
         "take inner walls out, and part or overlap what touches along an edge only, in the "
         "modelling program");
}

}  // namespace

ShellMends sound_shells(TriangleMesh mesh, const SurfaceEdges& edges, const std::string& file) {
  const EdgeFault crowded = edges.crowded;
  if (crowded.edges == 0 && edges.shells == 1 && enclosed_volume(mesh) >= Volume())
    return {std::move(mesh), {}};
  SurfaceEdges apart = edges;
  if (crowded.edges > 0) {
    mesh = touching_apart(mesh);
    apart = surface_edges(mesh);
    if (apart.crowded.edges + apart.open.edges + apart.turned.edges > 0)
      refuse_crowded(crowded, file);
  }
  ShellMending mending(std::move(mesh), std::move(apart), file);
  mending.drop_specks();
  mending.refuse_doubtful_nesting();
  mending.refuse_doubtful_crossing();
  mending.face_outward();
  mending.unite();
  if (crowded.edges > 0 && !mending.has_united()) refuse_crowded(crowded, file);
  return std::move(mending).result();
}

}  // namespace brimwright::geometry
