#include "geometry/repair/sound_solid.h"

#include "geometry/repair/mesh_checks.h"
#include "geometry/repair/mesh_mending.h"
#include "geometry/repair/shell_forest.h"
#include "geometry/surface/weld.h"

#include <iterator>
#include <utility>

namespace brimwright::geometry {

SoundSolid sound_solid(TriangleMesh mesh, bool is_welded, const std::string& file,
                       const FileFrame& frame) {
  if (!is_welded) {
    refuse_unsound_numbers(mesh, file);
    mesh = welded(mesh);
  }
  Mended mend = mended_welded(std::move(mesh), file, MendAim::closed_solid);
  std::vector<Remark> remarks = remarks_of(mend, file, frame);
  CheckedSolid checked = mend.mends.empty()
                             ? checked_welded(std::move(mend.mesh), std::move(mend.edges), file)
                             : checked_solid(mend.mesh, file);
  std::move(checked.remarks.begin(), checked.remarks.end(), std::back_inserter(remarks));
  return {std::move(checked.solid), std::move(checked.edges), std::move(remarks)};
}

std::vector<TriangleMesh> parts_of(const TriangleMesh& solid) {
  TriangleMesh mesh = welded(solid);
  drop_collapsed_facets(mesh);
  const SurfaceEdges edges = surface_edges(mesh);
  std::vector<TriangleMesh> parts = solids_by_shell(mesh, edges, shell_forest(mesh, edges, "mesh"));
  std::erase_if(parts, [](const TriangleMesh& part) { return part.triangles.empty(); });
  return parts;
}

SoundSkin sound_skin(const TriangleMesh& mesh, bool is_welded, const std::string& file,
                     const FileFrame& frame) {
  Mended mend = is_welded ? mended_welded(mesh, file, MendAim::open_skin)
                          : mended(mesh, file, MendAim::open_skin);
  std::vector<Remark> remarks = remarks_of(mend, file, frame);
  std::vector<Rim> rims = rims_of(mend.mesh);
  return {std::move(mend.mesh), std::move(rims), std::move(remarks)};
}

}  // namespace brimwright::geometry
