#include "geometry/repair/mend_facing.h"

#include "geometry/repair/facet_neighbours.h"
#include "geometry/surface/vectors.h"

#include <string>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

enum class Turning : char { unknown, stays, turns };

/// Whether two facets beside each other show the same side: they run through the edge against each
/// other.
bool alike(const TriangleMesh& mesh, std::size_t half, std::size_t other) {
  return mesh.triangles[half / 3][half % 3] != mesh.triangles[other / 3][other % 3];
}

/// Spreads from `seed` over its shell; gives the facets reached.
std::vector<std::size_t> spread(const TriangleMesh& mesh, const FacetNeighbours& neighbours,
                                std::size_t seed, std::vector<Turning>& turning_of) {
  std::vector<std::size_t> shell = {seed};
  turning_of[seed] = Turning::stays;
  for (std::size_t next = 0; next < shell.size(); ++next) {
    for (std::size_t i = 0; i < 3; ++i) {
      const std::size_t here = 3 * shell[next] + i;
      const std::uint32_t there = neighbours.across(here);
      if (there >= FacetNeighbours::crowded || turning_of[there / 3] != Turning::unknown) continue;
      const bool same = alike(mesh, here, there);
      const bool turns = (turning_of[here / 3] == Turning::turns) == same;
      turning_of[there / 3] = turns ? Turning::turns : Turning::stays;
      shell.push_back(there / 3);
    }
  }
  return shell;
}

}  // namespace

std::optional<Mend> face_alike(TriangleMesh& mesh) {
  const FacetNeighbours neighbours(mesh);
  std::vector<Turning> turning_of(mesh.triangles.size(), Turning::unknown);
  for (std::size_t facet = 0; facet < turning_of.size(); ++facet) {
    if (turning_of[facet] != Turning::unknown) continue;
    const std::vector<std::size_t> shell = spread(mesh, neighbours, facet, turning_of);
    std::size_t turning = 0;
    for (const std::size_t each : shell) turning += turning_of[each] == Turning::turns ? 1 : 0;
    if (2 * turning <= shell.size()) continue;
    for (const std::size_t each : shell)
      turning_of[each] = turning_of[each] == Turning::turns ? Turning::stays : Turning::turns;
  }
  Mend mend{.flaw = Flaw::turned_facets, .what = {}, .bound = {}};
  for (std::size_t facet = 0; facet < turning_of.size(); ++facet) {
    if (turning_of[facet] != Turning::turns) continue;
    if (mend.count++ == 0) mend.first_mm = middle_of(mesh, mesh.triangles[facet]);
    std::swap(mesh.triangles[facet][1], mesh.triangles[facet][2]);
  }
  if (mend.count == 0) return std::nullopt;
  mend.what = std::to_string(mend.count) + (mend.count == 1 ? " facet" : " facets") +
              " turned that showed the back where the neighbours show the front";
  return mend;
}

}  // namespace brimwright::geometry
