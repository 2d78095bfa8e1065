#include "geometry/pockets/pockets.h"
#include "geometry/surface/weld.h"
#include "random_bodies.h"
#include "solids.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::geometry;
using namespace brimwright::geometry::test;
using Catch::Matchers::WithinAbs;

// Bodies of cells of one millimetre, so every volume is a count of cells on paper: 1 mm3 each.

namespace {

double mm3(Volume volume) { return volume / cubic_millimetre; }

PocketSurvey pockets_in(std::array<int, 3> size, const std::vector<Cut>& cuts) {
  return pockets_of_body(welded(CellBody(size, cuts).mesh()));
}

const Cut slab{true, {0, 0, 0}, {30, 20, 12}};

}  // namespace

TEST_CASE("a pocket holds its cells, from its floor to its brim", "[pockets]") {
  const PocketSurvey survey = pockets_in({30, 20, 12}, {slab, {false, {5, 5, 2}, {15, 15, 12}}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  CHECK_THAT(mm3(pocket.brimful), WithinAbs(10 * 10 * 10, 1e-9));
  CHECK(pocket.floor_mm == 2);
  CHECK(pocket.brim_mm == 12);
  CHECK_THAT(pocket.opening / square_millimetre, WithinAbs(100, 1e-9));
  CHECK_THAT(mm3(pocket.curve.volume_below(4 * millimetre)), WithinAbs(400, 1e-9));
  CHECK_THAT(mm3(survey.solid), WithinAbs(30 * 20 * 12 - 1000, 1e-9));
  CHECK_THAT(mm3(pocket.trapped_air), WithinAbs(0, 1e-9));
  CHECK(survey.undercuts.empty());
}

TEST_CASE("a notch in the rim is where a pocket spills", "[pockets]") {
  // The notch is 3 mm deep and goes through the rim to the outside at x = 0.
  const PocketSurvey survey = pockets_in(
      {30, 20, 12}, {slab, {false, {5, 5, 2}, {15, 15, 12}}, {false, {0, 9, 9}, {5, 11, 12}}});
  REQUIRE(survey.pockets.size() == 1);
  CHECK(survey.pockets.front().brim_mm == 9);
  CHECK_THAT(mm3(survey.pockets.front().brimful), WithinAbs(10 * 10 * 7, 1e-9));
  CHECK(survey.pockets.front().spills_at_mm[2] == 9);
}

TEST_CASE("two pockets with a low wall between hold together what they hold to the common brim",
          "[pockets]") {
  // 10 x 10 mm each, the wall between them 2 mm thick and 3 mm below the rim.
  const PocketSurvey survey = pockets_in({30, 20, 12}, {slab,
                                                        {false, {4, 5, 2}, {14, 15, 12}},
                                                        {false, {16, 5, 2}, {26, 15, 12}},
                                                        {false, {14, 5, 9}, {16, 15, 12}}});
  REQUIRE(survey.pockets.size() == 2);
  for (const Pocket& pocket : survey.pockets) {
    CHECK(pocket.brim_mm == 9);
    CHECK_THAT(mm3(pocket.brimful), WithinAbs(10 * 10 * 7, 1e-9));
    CHECK(pocket.basin == 0U);
  }
  REQUIRE(survey.basins.size() == 1);
  CHECK(survey.basins.front().brim_mm == 12);
  CHECK_THAT(mm3(survey.basins.front().brimful), WithinAbs(2 * 700 + 22 * 10 * 3, 1e-9));
}

TEST_CASE("a pocket with a hole through its floor holds nothing", "[pockets]") {
  const PocketSurvey drained = pockets_in(
      {30, 20, 12}, {slab, {false, {5, 5, 2}, {15, 15, 12}}, {false, {9, 9, 0}, {11, 11, 2}}});
  CHECK(drained.pockets.empty());
  // A hole in its side, 4 mm above the floor, leaves what lies below it.
  const PocketSurvey pierced = pockets_in(
      {30, 20, 12}, {slab, {false, {5, 5, 2}, {15, 15, 12}}, {false, {0, 9, 6}, {5, 11, 8}}});
  REQUIRE(pierced.pockets.size() == 1);
  CHECK_THAT(mm3(pierced.pockets.front().brimful), WithinAbs(10 * 10 * 4, 1e-9));
}

TEST_CASE("relief on a pocket's floor does not make pockets of it", "[pockets]") {
  // A letter of two bars, sunk 1 mm into the floor of a pocket 9 mm deep.
  const PocketSurvey survey = pockets_in({30, 20, 12}, {slab,
                                                        {false, {4, 4, 3}, {26, 16, 12}},
                                                        {false, {7, 6, 2}, {9, 14, 3}},
                                                        {false, {13, 6, 2}, {15, 14, 3}}});
  REQUIRE(survey.pockets.size() == 1);
  CHECK_THAT(mm3(survey.pockets.front().brimful), WithinAbs(22 * 12 * 9 + 2 * 2 * 8, 1e-9));
  CHECK(survey.basins.empty());
}

TEST_CASE("a ledge keeps the air under it", "[pockets]") {
  // A pocket 10 x 10 x 8 mm whose upper 4 mm are covered on one half: a bell 5 x 10 mm, its roof at
  // z = 8, its lip at z = 6 by a rib. Air stays between the lip and the roof: 5 x 10 x 2 mm, less
  // the rib.
  const PocketSurvey survey = pockets_in({30, 20, 12}, {slab,
                                                        {false, {5, 5, 2}, {15, 15, 8}},
                                                        {false, {10, 5, 8}, {15, 15, 12}},
                                                        {true, {9, 5, 6}, {10, 15, 8}}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  const double hollow = 10 * 10 * 6 + 5 * 10 * 4 - 1 * 10 * 2;
  CHECK_THAT(mm3(pocket.brimful), WithinAbs(hollow, 1e-9));
  CHECK_THAT(mm3(pocket.trapped_air), WithinAbs(4 * 10 * 2, 1e-6));
  REQUIRE_FALSE(survey.undercuts.empty());
  CHECK(survey.undercuts.front().at_mm[2] == 8);
}

TEST_CASE("a hollow without a way in is a void, not a pocket", "[pockets]") {
  const PocketSurvey survey = pockets_in(
      {30, 20, 12}, {slab, {false, {5, 5, 4}, {15, 15, 12}}, {false, {20, 5, 4}, {26, 15, 8}}});
  CHECK(survey.pockets.size() == 1);
  CHECK(survey.sealed_voids == 1);
  CHECK_THAT(mm3(survey.sealed_volume), WithinAbs(6 * 10 * 4, 1e-9));
}

TEST_CASE("a post and a stalactite in a pocket take their room in it", "[pockets]") {
  // A beam across the opening with a tip that hangs down from it, not touching the floor, and a
  // post.
  const PocketSurvey survey = pockets_in({30, 20, 12}, {slab,
                                                        {false, {5, 5, 2}, {15, 15, 10}},
                                                        {false, {5, 5, 10}, {15, 15, 12}},
                                                        {true, {5, 9, 10}, {15, 11, 12}},
                                                        {true, {9, 9, 6}, {11, 11, 10}},
                                                        {true, {6, 6, 2}, {7, 7, 9}}});
  REQUIRE(survey.pockets.size() == 1);
  const double room = 10 * 10 * 10 - 10 * 2 * 2 - 2 * 2 * 4 - 1 * 1 * 7;
  CHECK_THAT(mm3(survey.pockets.front().brimful), WithinAbs(room, 1e-9));
}

TEST_CASE("small dents beside a pocket are dents", "[pockets]") {
  // 1 mm3 against 1000 mm3, below 2 % of the largest pocket.
  const PocketSurvey survey = pockets_in(
      {30, 20, 12}, {slab, {false, {5, 5, 2}, {15, 15, 12}}, {false, {22, 9, 11}, {23, 10, 12}}});
  CHECK(survey.pockets.size() == 1);
  CHECK(survey.dents == 1);
  CHECK_THAT(mm3(survey.dents_volume), WithinAbs(1, 1e-9));
}

TEST_CASE("a tube stood upright has no floor and no pocket", "[pockets]") {
  CHECK(pockets_in({30, 20, 12}, {slab, {false, {5, 5, 0}, {15, 15, 12}}}).pockets.empty());
}

TEST_CASE("a skin of two wells has two pockets, and what they hold past the wall between",
          "[pockets]") {
  // The surface of a solid of two blocks joined at the top, its lid taken away: as a liner would
  // be.
  TriangleMesh skin = welded(CellBody({30, 20, 12}, {{true, {2, 5, 0}, {12, 15, 10}},
                                                     {true, {16, 5, 0}, {26, 15, 10}},
                                                     {true, {2, 5, 10}, {26, 15, 12}}})
                                 .mesh());
  std::erase_if(skin.triangles, [&](const auto& facet) {
    return std::all_of(facet.begin(), facet.end(),
                       [&](std::uint32_t corner) { return skin.vertices_mm[corner][2] == 12; });
  });
  drop_unused_vertices(skin);
  const PocketSurvey survey = skin_wells(skin).wells;
  REQUIRE(survey.pockets.size() == 2);
  for (const Pocket& well : survey.pockets) CHECK_THAT(mm3(well.brimful), WithinAbs(1000, 1e-9));
  REQUIRE(survey.basins.size() == 1);
  CHECK_THAT(mm3(survey.basins.front().brimful), WithinAbs(2000 + 24 * 10 * 2, 1e-9));
}
