#include "moulds/hollowness.h"

#include "geometry/repair/sound_solid.h"
#include "role_solids.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <cstdint>

namespace brimwright::moulds {
namespace {

using geometry::test::RoleSolid;

TEST_CASE("what bounds say of a part, measuring it exactly never contradicts", "[moulds][law]") {
  const std::uint32_t seed = GENERATE(1U, 2U);
  std::size_t told = 0;
  for (const RoleSolid& row : geometry::test::varied_role_solids(seed)) {
    for (const auto& part : geometry::parts_of(row.mesh)) {
      const auto bounds = hollowness_bounds(part);
      if (!bounds) continue;
      ++told;
      INFO(row.name);
      const Hollowness exact = hollowness_of(part);
      CHECK(bounds->fill_at_least <= exact.fill);
      CHECK(bounds->fill_at_most >= exact.fill * (1 - 1e-12));
      CHECK(bounds->deepest_at_most >= exact.deepest);
      CHECK(bounds->depth_share_at_most >= exact.depth_share);
    }
  }
  CHECK(told > 50);  // of some hundred parts
}

TEST_CASE("a ball's bounds are near enough to call it full", "[moulds]") {
  // A convex solid fills all of the least convex solid round it, and has no dent.
  const auto bounds = hollowness_bounds(geometry::test::ball(30, 60, 90));
  REQUIRE(bounds);
  CHECK(bounds->fill_at_least > 0.99);
  CHECK(bounds->deepest_at_most < 0.3 * millimetre);
}

}  // namespace
}  // namespace brimwright::moulds
