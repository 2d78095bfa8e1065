#include "geometry/repair/mesh_mending.h"

#include "geometry/repair/mend_facets.h"
#include "geometry/repair/mend_facing.h"
#include "geometry/repair/mend_holes.h"
#include "geometry/repair/mend_seams.h"
#include "geometry/repair/mend_shells.h"
#include "geometry/repair/mend_weld.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/mesh_error.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"
#include "units/printing.h"
#include "units/user_error.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <utility>

namespace brimwright::geometry {
namespace {

// How far apart corners may lie and still be one, as shares of the mesh's diagonal: the step of
// single precision is 6e-8 of a coordinate, and modellers round to some five digits.
constexpr double small_reach = 1e-6, largest_reach = 1e-5;

std::size_t faults(const SurfaceEdges& edges) {
  return edges.open.edges + edges.crowded.edges + edges.turned.edges;
}

double diagonal_mm(const TriangleMesh& mesh) {
  const auto [low, high] = bounding_box(mesh);
  return length(high - low);
}

/// A copy of the surface with some steps done.
struct Trial {
  TriangleMesh mesh;
  std::vector<Mend> mends;
};

/// A surface on its way to being whole; steps are tried and kept only if they help.
class SurfaceMending {
 public:
  explicit SurfaceMending(TriangleMesh& mesh)
      : mesh_(mesh),
        edges_(surface_edges(mesh)),
        before_{edges_.open, edges_.crowded, edges_.turned} {}
  SurfaceMending(TriangleMesh& mesh, MendedSurface so_far)
      : mesh_(mesh),
        edges_(std::move(so_far.edges)),
        before_(so_far.before),
        mends_(std::move(so_far.mends)) {}

  /// Does the steps on a copy, and takes it over if it has fewer faulty edges.
  template <class... Steps>
  void attempt(Steps... steps) {
    keep_best({tried(steps...)});
  }

  /// The first step, and if it has something to do, those that follow from it.
  template <class... Steps>
  Trial tried(Steps... steps) const {
    Trial trial;
    if (faults(edges_) == 0) return trial;
    trial.mesh = mesh_;
    const auto run = [&](auto step) {
      auto mend = step(trial.mesh);
      if (mend) trial.mends.push_back(std::move(*mend));
      return !trial.mends.empty();
    };
    (run(steps) && ...);
    return trial;
  }

  /// Takes over the trial with the fewest faulty edges, the first of equals, if that helps.
  void keep_best(std::vector<Trial> trials) {
    const TriangleMesh* best = nullptr;
    for (Trial& trial : trials) {
      if (trial.mends.empty() || trial.mesh.triangles.empty()) continue;
      SurfaceEdges edges = surface_edges(trial.mesh);
      if (faults(edges) >= faults(edges_)) continue;
      edges_ = std::move(edges);
      best = &trial.mesh;
    }
    for (Trial& trial : trials) {
      if (&trial.mesh != best) continue;
      mesh_ = std::move(trial.mesh);
      std::move(trial.mends.begin(), trial.mends.end(), std::back_inserter(mends_));
      return;
    }
  }

  MendedSurface result() && { return {std::move(edges_), std::move(mends_), before_}; }

 private:
  TriangleMesh& mesh_;
  SurfaceEdges edges_;
  EdgeFaults before_;
  std::vector<Mend> mends_;
};

/// So many open edges that facets do not meet at all, rather than that some are missing.
[[noreturn]] void refuse_apart(const TriangleMesh& mesh, const SurfaceEdges& edges,
                               const std::string& file) {
  throw PlacedError(
      {.file = file,
       .field = place_text(edges.open.first_mm),
       .problem = "is open: its facets do not meet; corners that should be one lie more than " +
                  trimmed(largest_reach * diagonal_mm(mesh), 6) + " mm apart",
       .remedy =
           "in the modelling program, join the corners that nearly touch, and export it again"},
      edges.open.first_mm);
}

[[noreturn]] void refuse_open(const TriangleMesh& mesh, const SurfaceEdges& edges,
                              const std::string& file) {
  if (edges.open.edges >= mesh.triangles.size()) refuse_apart(mesh, edges, file);
  UserError::Parts parts{
      .file = file,
      .field = place_text(edges.open.first_mm),
      .problem = "is open: " + std::to_string(edges.open.edges) +
                 (edges.open.edges == 1 ? " edge has" : " edges have") +
                 " a facet on one side only",
      .remedy = "close the surface in the modelling program and export it again"};
  const std::vector<Rim> rims = rims_of(mesh);
  if (rims.empty()) throw PlacedError(parts, edges.open.first_mm);
  const Vector at_mm = rims.front().middle_mm;
  parts.field = place_text(at_mm);
  parts.problem += "; the largest of " + std::to_string(rims.size()) +
                   (rims.size() == 1 ? " hole" : " holes") + ", here, is " +
                   trimmed(rims.front().width_mm(), 1) +
                   " mm across, too large to be filled by guessing";
  throw LargeHole(parts, at_mm);
}

void refuse_faulty(const TriangleMesh& mesh, const SurfaceEdges& edges, const std::string& file,
                   MendAim aim) {
  if (aim == MendAim::closed_solid && edges.open.edges > 0) refuse_open(mesh, edges, file);
  if (aim == MendAim::open_skin && edges.crowded.edges > 0)
    throw PlacedError({.file = file,
                       .field = place_text(edges.crowded.first_mm),
                       .problem = "is not a single skin: more than two facets meet at " +
                                  std::to_string(edges.crowded.edges) + " edges, the first here",
                       .remedy = "keep only the inner surface, in the modelling program"},
                      edges.crowded.first_mm);
  if (edges.turned.edges > 0)
    throw PlacedError(
        {.file = file,
         .field = place_text(edges.turned.first_mm),
         .problem = "has a surface that turns back on itself with its other side out, "
                    "so that it has no inside",
         .remedy = "repair it in the modelling program and export it again"},
        edges.turned.first_mm);
}

/// Turns a skin so that it would face outward with a lid on its widest rim. A flat fan from the
/// rim's middle is as good a lid as any: seen from there it encloses nothing.
void face_as_with_lid(TriangleMesh& mesh, std::vector<Mend>& mends) {
  const std::vector<Rim> rims = rims_of(mesh);
  if (rims.empty()) return;
  double six_volumes = 0;
  for (const auto& [a, b, c] : mesh.triangles) {
    const Vector& from = rims.front().middle_mm;
    six_volumes += dot(mesh.vertices_mm[a] - from,
                       cross(mesh.vertices_mm[b] - from, mesh.vertices_mm[c] - from));
  }
  if (six_volumes >= 0) return;
  for (auto& corners : mesh.triangles) std::swap(corners[1], corners[2]);
  mends.push_back({.flaw = Flaw::inside_out,
                   .what = "the whole skin was inside out; its facets were turned to face outward",
                   .count = 1,
                   .first_mm = mesh.vertices_mm[mesh.triangles.front().front()],
                   .bound = {}});
}

}  // namespace

MendedSurface mend_surface(TriangleMesh& mesh) {
  const std::optional<Mend> collapsed = drop_collapsed(mesh);
  const double diagonal = mesh.triangles.empty() ? 0 : diagonal_mm(mesh);
  SurfaceMending mending(mesh);
  mending.attempt(drop_duplicates);
  const auto join_within = [&](double reach) {
    return [=](TriangleMesh& m) { return join_near_corners(m, reach * diagonal); };
  };
  mending.keep_best({mending.tried(join_within(small_reach), drop_duplicates),
                     mending.tried(join_within(largest_reach), drop_duplicates)});
  const auto drop_caps = [&](TriangleMesh& m) { return drop_flat(m, 1e-7 * diagonal); };
  const auto split = [&](TriangleMesh& m) { return split_seams(m, largest_reach * diagonal); };
  mending.attempt(drop_caps, split);
  mending.attempt(split, drop_duplicates);
  mending.attempt(face_alike);
  MendedSurface surface = std::move(mending).result();
  if (collapsed) surface.mends.insert(surface.mends.begin(), *collapsed);
  return surface;
}

Mended mended(const TriangleMesh& mesh, const std::string& file, MendAim aim) {
  refuse_unsound_numbers(mesh, file);
  return mended_welded(welded(mesh), file, aim);
}

Mended mended_welded(TriangleMesh mesh, const std::string& file, MendAim aim) {
  Mended done{.mesh = std::move(mesh), .mends = {}, .edges = {}};
  MendedSurface surface = mend_surface(done.mesh);
  if (done.mesh.triangles.empty())
    throw UserError({.file = file,
                     .field = "",
                     .problem = "encloses no volume",
                     .remedy = "give the solid that is to be filled"});
  SurfaceMending mending(done.mesh, std::move(surface));
  mending.attempt(drop_scraps);
  const Rims holes = aim == MendAim::closed_solid ? Rims::all : Rims::but_the_widest;
  mending.attempt([&](TriangleMesh& m) { return fill_small_holes(m, holes); });
  surface = std::move(mending).result();
  refuse_faulty(done.mesh, surface.edges, file, aim);
  done.mends = std::move(surface.mends);
  if (aim == MendAim::open_skin) {
    done.edges = std::move(surface.edges);
    face_as_with_lid(done.mesh, done.mends);
    return done;
  }
  ShellMends shells = sound_shells(std::move(done.mesh), surface.edges, file);
  done.mesh = std::move(shells.mesh);
  done.edges = shells.mends.empty() ? std::move(surface.edges) : surface_edges(done.mesh);
  for (Mend& mend : shells.mends) done.mends.push_back(std::move(mend));
  return done;
}

std::vector<Remark> remarks_of(const Mended& mended, const std::string& file,
                               const FileFrame& frame) {
  if (mended.mends.empty()) return {};
  const auto [low, high] = bounding_box(mended.mesh);
  const Vector size = high - low;
  const bool is_closed = mended.edges.open.edges == 0;
  const double whole_mm3 =
      is_closed ? enclosed_volume(mended.mesh) / cubic_millimetre : size[0] * size[1] * size[2];
  std::vector<Remark> remarks;
  for (const Mend& mend : mended.mends) {
    const double bound_mm3 = mend.bound / cubic_millimetre;
    std::string text = file + ": " + mend.what + ", the first " + place_text(mend.first_mm, frame);
    if (bound_mm3 > 0.0005)
      text +=
          "; this changes the volume by less than " + trimmed(bound_mm3 / 1000 + 5e-7, 6) + " ml";
    const bool weighs = bound_mm3 > 0.001 * whole_mm3;
    remarks.push_back({weighs ? Severity::caution : Severity::note, std::move(text)});
  }
  return remarks;
}

}  // namespace brimwright::geometry
