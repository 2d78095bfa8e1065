#include "geometry/pockets/low_places.h"

#include "geometry/levels/level_curve.h"
#include "geometry/pockets/pocket_choice.h"
#include "geometry/pockets/pocket_surface.h"
#include "geometry/pockets/pocket_tree.h"
#include "geometry/pockets/pockets.h"
#include "geometry/repair/sound_solid.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"
#include "role_solids.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdint>

namespace brimwright::geometry {
namespace {

using test::RoleSolid;

/// What the tree of the air says, without the glance before it.
bool holds_nothing(const TriangleMesh& body) {
  const AirSurface surface = AirSurface::of_body(body);
  const PocketChoice choice = chosen_pockets(surface, air_tree(surface));
  return choice.pockets.empty() && choice.dents == 0 && choice.sealed_voids == 0;
}

TriangleMesh without_lid(TriangleMesh solid) {
  const double top = bounding_box(solid).high_mm[2];
  std::erase_if(solid.triangles, [&](const auto& facet) {
    return std::all_of(facet.begin(), facet.end(),
                       [&](std::uint32_t v) { return solid.vertices_mm[v][2] == top; });
  });
  return solid;
}

TEST_CASE("what a glance at the lowest places says, the tree of the air says too",
          "[moulds][law]") {
  const std::uint32_t seed = GENERATE(1U, 2U, 3U);
  std::size_t empty = 0, wells = 0;
  for (const RoleSolid& row : test::varied_role_solids(seed)) {
    INFO(row.name);
    if (surely_holds_nothing(welded(row.mesh))) {
      ++empty;
      CHECK(holds_nothing(welded(row.mesh)));
    }
    for (const TriangleMesh& part : parts_of(row.mesh)) {
      if (!is_surely_one_open_well(part)) continue;
      ++wells;
      const PocketSurvey survey = skin_wells(without_lid(part)).wells;
      REQUIRE(survey.pockets.size() == 1);
      CHECK(survey.undercuts.empty());
      CHECK(survey.pockets[0].trapped_air == Volume());
      CHECK_THAT(survey.pockets[0].brimful / enclosed_volume(part),
                 Catch::Matchers::WithinAbs(1, 1e-6));
    }
  }
  CHECK(empty > 20);
  CHECK(wells > 10);
}

}  // namespace
}  // namespace brimwright::geometry
