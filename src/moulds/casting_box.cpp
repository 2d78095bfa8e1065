#include "moulds/casting_box.h"

#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/surface_edges.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::moulds {
namespace {

/// What the master keeps out: its own volume and that of voids sealed in it, which are shells
/// facing inward.
Volume displaced_by(const geometry::TriangleMesh& master) {
  const geometry::SurfaceEdges edges = geometry::surface_edges(master);
  if (edges.shells == 1) return geometry::enclosed_volume(master);
  std::vector<decltype(master.triangles)> shells(edges.shells);
  for (std::size_t facet = 0; facet < master.triangles.size(); ++facet)
    shells[edges.shell[facet]].push_back(master.triangles[facet]);
  geometry::TriangleMesh shell{.vertices_mm = master.vertices_mm, .triangles = {}};
  Volume displaced;
  for (auto& triangles : shells) {
    shell.triangles = std::move(triangles);
    displaced += std::max(Volume(), geometry::enclosed_volume(shell));
  }
  return displaced;
}

void check(Length thickness, const char* what, const Place& where) {
  if (thickness > Length() && is_finite(thickness)) return;
  throw UserError(where, std::string("leaves no ") + what + " round the master",
                  "give its thickness, above 0 mm");
}

}  // namespace

CastingNeed casting_need(const geometry::TriangleMesh& master, const CastingBox& box,
                         const Place& where) {
  check(box.wall, "wall", where);
  check(box.base, "base", where);
  const geometry::Box size = geometry::bounding_box(master);
  const auto across = [&](std::size_t axis) {
    return (size.high_mm[axis] - size.low_mm[axis]) * millimetre;
  };
  const bool hung = box.master == CastingBox::Master::hung;
  CastingNeed need{.material = {},
                   .master = displaced_by(master),
                   .length = across(0) + 2 * box.wall,
                   .width = across(1) + 2 * box.wall,
                   .height = across(2) + box.base,
                   .master_from = hung ? box.base : Length(),
                   .master_to = {}};
  need.master_to = need.master_from + across(2);
  need.material = need.length * need.width * need.height - need.master;
  return need;
}

}  // namespace brimwright::moulds
