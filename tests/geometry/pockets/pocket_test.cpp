#include "geometry/files/mesh_file.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/weld.h"
#include "random_bodies.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

// Pockets with sloping walls, and the slab's. Those that are stacks of whole millimetres are in
// pocket_known_test.cpp.

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;
using test::CellBody;
using test::Cut;
using test::polygon_share;
using test::Terrain;
using test::Turned;

constexpr double exact = 1e-12;  // sums of some hundred terms

double mm2(Area area) { return area / square_millimetre; }
double mm3(Volume volume) { return volume / cubic_millimetre; }
double ml(Volume volume) { return volume / millilitre; }

double held(const Pocket& pocket, double level_mm) {
  return mm3(pocket.curve.volume_below((level_mm - pocket.floor_mm) * millimetre));
}

TEST_CASE("the slab's four pockets hold what its table says", "[geometry][pockets][samples]") {
  // tests/data/meshes/truth.json, to nine digits; corners stored in single precision (6e-8).
  constexpr double printed = 2e-7;
  const std::string path = BRIMWRIGHT_SOURCE_DIR "/tests/data/meshes/slab4_body.stl";
  const TriangleMesh body =
      welded(read_mesh(path, {.unit = LengthUnit::millimetre, .up = {}}).mesh);
  const PocketSurvey survey = pockets_of_body(body);
  REQUIRE(survey.pockets.size() == 4);
  std::vector<std::pair<double, double>> middles;
  for (const Pocket& pocket : survey.pockets) {
    CHECK(pocket.floor_mm == 6);
    CHECK(pocket.brim_mm == 31);
    CHECK_THAT(ml(pocket.brimful), WithinRel(59.2211276, printed));
    CHECK_THAT(mm2(pocket.opening), WithinRel(2560.1856, printed));
    const std::map<double, std::pair<double, double>> at_level = {{10, {8.84416421, 2240.5424}},
                                                                  {15, {20.2327505, 2315.05774}},
                                                                  {20, {31.9963981, 2390.56694}},
                                                                  {25, {44.1400763, 2467.07001}},
                                                                  {30, {56.6687546, 2544.56695}}};
    for (const auto& [z, truth] : at_level) {
      CHECK_THAT(held(pocket, z) / 1000, WithinRel(truth.first, printed));
      const Length depth = (z - pocket.floor_mm) * millimetre;
      CHECK_THAT(mm2(pocket.curve.free_surface(depth)), WithinRel(truth.second, printed));
      CHECK_THAT(pocket.curve.depth_at(truth.first * millilitre) / millimetre,
                 WithinRel(z - 6, printed));
    }
    CHECK(mm3(pocket.trapped_air) == 0);
    CHECK_FALSE(pocket.basin.has_value());
    middles.emplace_back(std::round(pocket.middle_mm[0] * 1e4) / 1e4,
                         std::round(pocket.middle_mm[1] * 1e4) / 1e4);
  }
  std::sort(middles.begin(), middles.end());
  CHECK(middles ==
        std::vector<std::pair<double, double>>{{-36, -26}, {-36, 26}, {36, -26}, {36, 26}});
  CHECK(survey.basins.empty());
  CHECK(survey.undercuts.empty());
  CHECK(survey.dents == 0);
  CHECK(survey.sealed_voids == 0);
  CHECK_THAT(ml(survey.solid), WithinRel(274.61549, printed));
}

// Terrains: level at 10 mm but for some corners. A corner lowered by d, its neighbours level, is a
// pyramid over the six half squares of 1/2 mm2 round it: it takes d x 3 / 3 = d mm3 away.

using Corner = std::pair<int, int>;

Terrain level_but_for(const std::map<Corner, double>& heights) {
  constexpr int columns = 13, rows = 7;
  Terrain terrain{.columns = columns, .rows = rows, .top = {}, .bottom = {}};
  terrain.top.assign(columns * rows, 10);
  terrain.bottom.assign(columns * rows, 0);
  for (const auto& [corner, height] : heights) {
    terrain.top[static_cast<std::size_t>(corner.second * columns + corner.first)] = height;
  }
  return terrain;
}

PocketSurvey pockets_in(const std::map<Corner, double>& heights) {
  return pockets_of_body(level_but_for(heights).mesh());
}

/// The terrain's top alone.
TriangleMesh skin_of(const Terrain& terrain) {
  TriangleMesh skin = terrain.mesh();
  const auto first = static_cast<std::uint32_t>(terrain.columns * terrain.rows);
  std::erase_if(skin.triangles, [&](const auto& facet) {
    return std::any_of(facet.begin(), facet.end(), [&](std::uint32_t v) { return v < first; });
  });
  drop_unused_vertices(skin);
  return skin;
}

// Pit 6 mm deep, one neighbour a sill 4 mm above the pit's floor. To the sill the water's edge is
// at 4/6 of the way to each of the five neighbours at 10 mm, and at the sill: six triangles, 4 of
// them 1/2 (2/3)^2 and 2 of them 1/2 (2/3), together 14/9 mm2, under a height of 4 mm: 56/27 mm3.
constexpr double to_the_sill = 56.0 / 27;

TEST_CASE("a pit holds a third of its opening times its depth, and an eighth at half its depth",
          "[geometry][pockets]") {
  const PocketSurvey survey = pockets_in({{{3, 3}, 4}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pit = survey.pockets.front();
  CHECK(pit.floor_at_mm == std::array<double, 3>{3, 3, 4});
  CHECK_THAT(mm3(pit.brimful), WithinRel(6, exact));    // 3 mm2 x 6 mm / 3
  CHECK_THAT(held(pit, 7), WithinRel(6.0 / 8, exact));  // a cone grows by the cube
  CHECK_THAT(mm2(pit.opening), WithinRel(3, exact));    // six half squares
  CHECK_THAT(mm3(survey.solid), WithinRel(12 * 6 * 10 - 6, exact));
}

TEST_CASE("a pocket with a notch in its rim spills at the notch, and holds what lies below it",
          "[geometry][pockets]") {
  // The notch runs at 8 mm from beside the pit out through the side at y = 0.
  const PocketSurvey survey = pockets_in({{{3, 3}, 4}, {{3, 2}, 8}, {{3, 1}, 8}, {{3, 0}, 8}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pit = survey.pockets.front();
  CHECK(pit.brim_mm == 8);
  CHECK(pit.spills_at_mm[0] == 3);
  CHECK(pit.spills_at_mm[1] <= 2);
  CHECK(pit.spills_at_mm[2] == 8);
  CHECK_THAT(mm3(pit.brimful), WithinRel(to_the_sill, exact));
  CHECK_THAT(mm2(pit.opening), WithinRel(14.0 / 9, exact));
}

TEST_CASE("two pits with a low wall between spill into each other, and fill as one above it",
          "[geometry][pockets]") {
  const std::map<Corner, double> heights = {{{3, 3}, 4}, {{4, 3}, 8}, {{5, 3}, 4}};
  const bool as_skin = GENERATE(false, true);
  const bool facing_down = as_skin && GENERATE(false, true);
  const Terrain terrain = level_but_for(heights);
  const TriangleMesh skin = skin_of(terrain);
  const PocketSurvey survey = as_skin
                                  ? skin_wells(facing_down ? test::inside_out(skin) : skin).wells
                                  : pockets_of_body(terrain.mesh());
  REQUIRE(survey.pockets.size() == 2);
  for (const Pocket& pit : survey.pockets) {
    CHECK(pit.spills_at_mm == std::array<double, 3>{4, 3, 8});
    CHECK_THAT(mm3(pit.brimful), WithinRel(to_the_sill, exact));
    CHECK(pit.basin == 0U);
  }
  REQUIRE(survey.basins.size() == 1);
  const JointBasin& both = survey.basins.front();
  CHECK(both.pockets == std::vector<std::size_t>{0, 1});
  CHECK(both.floor_mm == 4);
  CHECK(both.brim_mm == 10);
  // To the wall, what both hold; to the rim, what each lowered corner takes away: 6 + 2 + 6 mm3.
  CHECK_THAT(mm3(both.curve.volume_below(4 * millimetre)), WithinRel(2 * to_the_sill, exact));
  CHECK_THAT(mm3(both.brimful), WithinRel(14, exact));
}

TEST_CASE("a wall that is lower than half the depth makes no pockets, only a floor with a ridge",
          "[geometry][pockets]") {
  const PocketSurvey low = pockets_in({{{3, 3}, 4}, {{4, 3}, 6.9}, {{5, 3}, 4}});
  REQUIRE(low.pockets.size() == 1);
  CHECK_THAT(mm3(low.pockets.front().brimful), WithinRel(6 + 3.1 + 6, exact));
  CHECK(low.pockets.front().brim_mm == 10);
  CHECK(low.basins.empty());
  // At half the depth, 3 of 6 mm, there are two.
  CHECK(pockets_in({{{3, 3}, 4}, {{4, 3}, 7}, {{5, 3}, 4}}).pockets.size() == 2);
}

TEST_CASE("a hollow of less than a fiftieth of the largest pocket is a dent",
          "[geometry][pockets]") {
  // 6 mm3 beside 0.119 and 0.05 mm3 (dents, as 6 / 50 = 0.12) and beside 0.121 (a pocket).
  const PocketSurvey survey =
      pockets_in({{{3, 3}, 4}, {{6, 3}, 10 - 0.119}, {{9, 3}, 10 - 0.05}, {{11, 3}, 10 - 0.121}});
  CHECK(survey.pockets.size() == 2);
  CHECK(survey.dents == 2);
  CHECK_THAT(mm3(survey.dents_volume), WithinRel(0.169, 1e-9));  // 0.119 as a difference from 10
}

TEST_CASE("a finished piece's engraving is far below a hundredth of the piece",
          "[geometry][pockets]") {
  // A bar of 12 x 6 x 10 mm with three dots 0.5 mm deep, of 0.5 mm3 each, and a scratch shallower
  // than a ten-thousandth of its height, 0.001 mm.
  const PocketSurvey bar =
      pockets_in({{{3, 3}, 9.5}, {{6, 3}, 9.5}, {{9, 3}, 9.5}, {{11, 5}, 10 - 0.0009}});
  double held_mm3 = 0;
  for (const Pocket& dot : bar.pockets) held_mm3 += mm3(dot.brimful);
  CHECK_THAT(held_mm3, WithinRel(1.5, exact));
  CHECK(held_mm3 < 0.01 * mm3(bar.solid + held_mm3 * cubic_millimetre));
  CHECK(bar.dents == 1);
  // With the scratch alone there is nothing to fill at all.
  CHECK(pockets_in({{{11, 5}, 10 - 0.0009}}).pockets.empty());
}

TEST_CASE("the sample pieces, turned any way up, hold less than a hundredth of themselves",
          "[geometry][pockets][samples]") {
  const auto file = GENERATE("tests/data/meshes/fluted_cup_cavity.stl", "meshes/shell_pebble.stl");
  const Axis up = GENERATE(Axis::plus_x, Axis::minus_x, Axis::plus_y, Axis::minus_y, Axis::plus_z,
                           Axis::minus_z);
  CAPTURE(file, name_of(up));
  const std::string path = std::string(BRIMWRIGHT_SOURCE_DIR "/") + file;
  const PocketSurvey piece =
      pockets_of_body(welded(read_mesh(path, {.unit = LengthUnit::millimetre, .up = up}).mesh));
  double held_mm3 = mm3(piece.dents_volume);
  for (const Pocket& pocket : piece.pockets) held_mm3 += mm3(pocket.brimful);
  CAPTURE(held_mm3);
  CHECK(held_mm3 < 0.01 * mm3(piece.solid));
}

PocketSurvey pockets_in(std::array<int, 3> size, const std::vector<Cut>& cuts) {
  return pockets_of_body(CellBody(size, cuts).mesh());
}

const Cut slab{true, {0, 0, 0}, {30, 20, 12}};
const Cut square{false, {5, 5, 2}, {15, 15, 12}};  // 10 x 10 mm, 10 mm deep

TEST_CASE("a pocket with a pipe through its floor runs out over the pipe's lip",
          "[geometry][pockets]") {
  // 4 x 4 mm outside, 2 x 2 mm inside, its lip 5 mm above the floor.
  const PocketSurvey survey =
      pockets_in({30, 20, 12},
                 {slab, square, {true, {8, 8, 2}, {12, 12, 7}}, {false, {9, 9, 0}, {11, 11, 7}}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  CHECK(pocket.brim_mm == 7);
  CHECK(std::abs(pocket.spills_at_mm[0] - 10) <= 2);
  CHECK(std::abs(pocket.spills_at_mm[1] - 10) <= 2);
  CHECK_THAT(mm3(pocket.brimful), WithinRel((10 * 10 - 4 * 4) * 5.0, exact));
}

TEST_CASE("a tube without a floor holds nothing, stood up or laid down", "[geometry][pockets]") {
  const TriangleMesh tube =
      CellBody({10, 10, 20}, {{true, {0, 0, 0}, {10, 10, 20}}, {false, {2, 2, 0}, {8, 8, 20}}})
          .mesh();
  CHECK(pockets_of_body(tube).pockets.empty());
  CHECK(pockets_of_body(test::on_its_side(tube)).pockets.empty());
}

TEST_CASE("letters that stand up from a floor and cut it in parts leave one pocket",
          "[geometry][pockets]") {
  // A cross 1 mm high and 2 mm wide from wall to wall: 10 x 2 + 10 x 2 - 2 x 2 = 36 mm2.
  const PocketSurvey survey = pockets_in(
      {30, 20, 12}, {slab, square, {true, {9, 5, 2}, {11, 15, 3}}, {true, {5, 9, 2}, {15, 11, 3}}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  CHECK_THAT(mm3(pocket.brimful), WithinRel(1000 - 36.0, exact));
  CHECK_THAT(held(pocket, 3), WithinRel(100 - 36.0, exact));
  CHECK(survey.basins.empty());
  CHECK(survey.dents == 0);
}

// A well 5 x 10 mm with a cave beside it, 5 x 10 x 6 mm, behind a curtain 1 mm thick that hangs
// 3 mm down from the cave's roof.
const std::vector<Cut> belled = {slab,
                                 {false, {5, 5, 2}, {10, 15, 12}},
                                 {false, {10, 5, 2}, {15, 15, 8}},
                                 {true, {10, 5, 5}, {11, 15, 8}}};
constexpr double well_and_cave = 5 * 10 * 10 + 5 * 10 * 6 - 1 * 10 * 3;

Pocket belled_pocket(const std::vector<Cut>& more) {
  std::vector<Cut> cuts = belled;
  cuts.insert(cuts.end(), more.begin(), more.end());
  const PocketSurvey survey = pockets_in({30, 20, 20}, cuts);
  REQUIRE(survey.pockets.size() == 1);
  return survey.pockets.front();
}

TEST_CASE("a bell keeps the air above its lip and below the brim", "[geometry][pockets]") {
  // Behind the curtain 4 x 10 x 3 mm above its lower edge.
  const Pocket full = belled_pocket({});
  CHECK_THAT(mm3(full.brimful), WithinRel(well_and_cave, exact));
  CHECK_THAT(mm3(full.trapped_air), WithinRel(4 * 10 * 3.0, exact));
  // A notch 5 mm deep: the brim is 1 mm below the cave's roof, so 2 mm above the curtain's edge.
  const Pocket notched = belled_pocket({{false, {0, 9, 7}, {5, 11, 12}}});
  CHECK_THAT(mm3(notched.brimful), WithinRel(10 * 10 * 5 - 1 * 10 * 2.0, exact));
  CHECK_THAT(mm3(notched.trapped_air), WithinRel(4 * 10 * 2.0, exact));
}

TEST_CASE("a bell with a vent keeps no air", "[geometry][pockets]") {
  // A hole of 1 x 1 mm from its roof to the slab's top, 4 mm long.
  const Pocket vented = belled_pocket({{false, {13, 9, 8}, {14, 10, 12}}});
  CHECK_THAT(mm3(vented.brimful), WithinRel(well_and_cave + 4, exact));
  CHECK_THAT(mm3(vented.trapped_air), WithinAbs(0, 1e-9));
  // The same hole up through a tower, over the brim and down again: through the slab's bottom, or
  // to where it ends, at the height of the curtain's edge. Only if it ends open does air leave by
  // it.
  const auto piped = [](int end) {
    return belled_pocket({{true, {12, 5, 12}, {28, 15, 20}},
                          {false, {13, 9, 8}, {14, 10, 15}},
                          {false, {14, 9, 14}, {25, 10, 15}},
                          {false, {24, 9, end}, {25, 10, 14}}});
  };
  CHECK(piped(0).brim_mm == 12);
  CHECK_THAT(mm3(piped(0).brimful), WithinRel(well_and_cave + 4, exact));
  CHECK_THAT(mm3(piped(0).trapped_air), WithinAbs(0, 1e-9));
  // Its blind end keeps the air in it, with the cave's and that in the 4 mm of hole up to the brim.
  CHECK(mm3(piped(5).trapped_air) >= 4 * 10 * 3 + 4 - 1e-9);
}

TEST_CASE("a ledge is told as an undercut of its own pocket, at its place", "[geometry][pockets]") {
  // The second pocket is deeper, so the first in the list; 10 x 8 mm below z = 8, and 8 x 8 above:
  // the ledge's underside is 2 x 8 mm at z = 8.
  const PocketSurvey survey = pockets_in(
      {30, 20, 12},
      {slab, square, {false, {18, 6, 1}, {28, 14, 8}}, {false, {18, 6, 8}, {26, 14, 12}}});
  REQUIRE(survey.pockets.size() == 2);
  CHECK(survey.pockets.front().floor_mm == 1);
  REQUIRE(survey.undercuts.size() == 1);
  const Undercut& ledge = survey.undercuts.front();
  CHECK(ledge.pocket == 0);
  CHECK_THAT(mm2(ledge.area), WithinRel(16, exact));
  CHECK(ledge.at_mm[0] > 26);
  CHECK(ledge.at_mm[0] < 28);
  CHECK(ledge.at_mm[2] == 8);
}

TEST_CASE("a tip that hangs into a pocket takes its room only from its lower end on",
          "[geometry][pockets]") {
  // From a bridge across the rim, 2 mm thick, a tip 2 x 2 mm hangs down to 4 mm above the floor.
  const PocketSurvey survey =
      pockets_in({30, 20, 12},
                 {slab, square, {true, {5, 9, 10}, {15, 11, 12}}, {true, {9, 9, 6}, {11, 11, 10}}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  CHECK_THAT(held(pocket, 6), WithinRel(400, exact));
  CHECK_THAT(held(pocket, 8), WithinRel(400 + 96 * 2.0, exact));
  CHECK_THAT(held(pocket, 10), WithinRel(400 + 96 * 4.0, exact));
  CHECK_THAT(mm3(pocket.brimful), WithinRel(400 + 96 * 4 + 80 * 2.0, exact));
  CHECK_THAT(mm2(pocket.opening), WithinRel(80, exact));
  CHECK_THAT(mm3(pocket.trapped_air), WithinAbs(0, 1e-9));
}

TEST_CASE("a tilted pocket holds what lies below its lowest rim", "[geometry][pockets]") {
  // Its section, 10 mm wide (w) and 10 mm deep (h), tilted by t about y: to the lower rim's corner
  // w h - w^2 tan t / 2, and from 45 degrees on h^2 / (2 tan t); 10 mm long.
  const double degrees = GENERATE(5.0, 30.0, 44.0, 60.0, 80.0);
  const double t = degrees * pi / 180;
  CAPTURE(degrees);
  TriangleMesh body = CellBody({30, 20, 12}, {slab, square}).mesh();
  for (auto& [x, y, z] : body.vertices_mm) {
    const double across = x * std::cos(t) - z * std::sin(t);
    z = x * std::sin(t) + z * std::cos(t);
    x = across;
  }
  const PocketSurvey survey = pockets_of_body(body);
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& pocket = survey.pockets.front();
  const double section = degrees < 45 ? 100 - 50 * std::tan(t) : 50 / std::tan(t);
  CHECK_THAT(mm3(pocket.brimful), WithinRel(10 * section, 1e-9));  // the sine rounded
  // The rim that is lowest had x = 5, z = 12.
  CHECK_THAT(pocket.brim_mm, WithinAbs(5 * std::sin(t) + 12 * std::cos(t), 1e-9));
  // The wall at x = 15 leans over, and counts as far up as liquid reaches: 10 - 10 tan t.
  if (degrees > 45) {
    CHECK(survey.undercuts.empty());
  } else {
    REQUIRE(survey.undercuts.size() == 1);
    CHECK_THAT(mm2(survey.undercuts.front().area), WithinRel(100 - 100 * std::tan(t), 1e-9));
  }
}

// Turned about z in flat sides: a section's share of its circle is the same for all radii, so
// Pappus' volumes hold but for that share.

constexpr std::uint32_t sides = 40;

PocketSurvey pockets_in_cup(const std::vector<Turned>& inside) {
  std::vector<Turned> profile = {{20, 0}, {20, 30}};
  profile.insert(profile.end(), inside.begin(), inside.end());
  return pockets_of_body(welded(test::turned(profile, sides)));
}

/// The area of a turned slope in flat sides: trapezia between two chords.
double slope_mm2(const Turned& a, const Turned& b) {
  const double out = (a.radius - b.radius) * std::cos(pi / sides);
  const double chords = 2 * (a.radius + b.radius) * std::sin(pi / sides);
  return sides * chords / 2 * std::hypot(out, a.height - b.height);
}

TEST_CASE("a groove round a cup traps the air above its lip", "[geometry][pockets]") {
  // A bore of 10 mm radius, a groove to 16 mm from z = 5 up; its ceiling rises outwards from the
  // lip at z = 20 to z = 24.
  const PocketSurvey survey = pockets_in_cup({{10, 30}, {10, 20}, {16, 24}, {16, 5}, {0, 5}});
  REQUIRE(survey.pockets.size() == 1);
  const Pocket& cup = survey.pockets.front();
  // Above the lip a triangle, 6 x 4 mm, its centroid 10 + 2/3 x 6 = 14 mm from the axis.
  const double above_lip = 2 * pi * 14 * 12 * polygon_share(sides);
  const double below_lip = pi * (16 * 16 * 15) * polygon_share(sides);
  const double bore = pi * 10 * 10 * 10 * polygon_share(sides);
  CHECK_THAT(mm3(cup.brimful), WithinRel(above_lip + below_lip + bore, exact));
  CHECK_THAT(mm3(cup.trapped_air), WithinRel(above_lip, 1e-9));
  CHECK_THAT(mm2(cup.opening), WithinRel(pi * 100 * polygon_share(sides), exact));
  REQUIRE(survey.undercuts.size() == 1);
  const Undercut& ceiling = survey.undercuts.front();
  CHECK_THAT(mm2(ceiling.area), WithinRel(slope_mm2({16, 24}, {10, 20}), exact));
  CHECK(ceiling.at_mm[2] > 20);
  CHECK(ceiling.at_mm[2] < 24);
  CHECK(std::hypot(ceiling.at_mm[0], ceiling.at_mm[1]) > 10 * std::cos(pi / sides));
  CHECK(std::hypot(ceiling.at_mm[0], ceiling.at_mm[1]) < 16);
}

TEST_CASE("a pocket that narrows upwards is undercut all round but traps no air",
          "[geometry][pockets]") {
  const PocketSurvey survey = pockets_in_cup({{10, 30}, {16, 5}, {0, 5}});
  REQUIRE(survey.pockets.size() == 1);
  // A frustum: pi h / 3 (R^2 + R r + r^2).
  const double frustum = pi * 25 / 3 * (256 + 160 + 100) * polygon_share(sides);
  CHECK_THAT(mm3(survey.pockets.front().brimful), WithinRel(frustum, exact));
  CHECK_THAT(mm3(survey.pockets.front().trapped_air), WithinAbs(0, 1e-6));
  REQUIRE(survey.undercuts.size() == 1);
  CHECK_THAT(mm2(survey.undercuts.front().area), WithinRel(slope_mm2({16, 5}, {10, 30}), exact));
}

TEST_CASE("a wall that leans over by less than half a degree is no undercut",
          "[geometry][pockets]") {
  const auto undercuts_at = [](double degrees) {
    const double out = 25 * std::tan(degrees * pi / 180) / std::cos(pi / sides);
    return pockets_in_cup({{10, 30}, {10 + out, 5}, {0, 5}}).undercuts.size();
  };
  CHECK(undercuts_at(0.4) == 0);
  CHECK(undercuts_at(0.6) == 1);
  CHECK(undercuts_at(-3) == 0);  // drafted as it should be
}

TEST_CASE("a void sealed in the wall is told and holds nothing", "[geometry][pockets]") {
  // A truncated wedge, 4 x 4 mm below, 2 x 2 above, 3 mm high: 3 / 3 (16 + 8 + 4) = 28 mm3.
  const TriangleMesh hole = test::moved(test::obelisk(4, 4, 2, 2, 3), {5, 5, 2});
  const PocketSurvey survey =
      pockets_of_body(test::together(test::box({0, 0, 0}, {10, 10, 10}), test::inside_out(hole)));
  CHECK(survey.pockets.empty());
  CHECK(survey.dents == 0);
  CHECK(survey.sealed_voids == 1);
  CHECK_THAT(mm3(survey.sealed_volume), WithinRel(28, exact));
  CHECK_THAT(mm3(survey.solid), WithinRel(1000 - 28, exact));
}

}  // namespace
}  // namespace brimwright::geometry
