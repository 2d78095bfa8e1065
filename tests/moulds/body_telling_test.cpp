// What a survey says of a mesh beside its volumes: rims, joint basins, noise, voids, places.

#include "geometry/files/mesh_writing.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "moulds/mesh_survey.h"
#include "random_bodies.h"
#include "scratch_file.h"
#include "solids.h"
#include "survey_wishes.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdio>
#include <random>

using namespace brimwright;
using namespace brimwright::geometry;
using namespace brimwright::moulds;
using namespace brimwright::geometry::test;
using namespace brimwright::moulds::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

TriangleMesh cells(std::array<int, 3> size, const std::vector<Cut>& cuts) {
  return CellBody(size, cuts).mesh();
}

const Cut block{true, {0, 0, 0}, {40, 30, 25}};
const Cut hollow{false, {2, 2, 2}, {38, 28, 25}};

std::vector<std::array<double, 3>> numbers_in(const std::string& text) {
  std::vector<std::array<double, 3>> found;
  for (std::size_t at = text.find("at ("); at != std::string::npos;
       at = text.find("at (", at + 1)) {
    std::array<double, 3> p{};
    if (std::sscanf(text.c_str() + at, "at (%lf, %lf, %lf)", &p[0], &p[1], &p[2]) == 3)
      found.push_back(p);
  }
  return found;
}

/// The complaint about a mesh written to a file.
std::string complaint_of(const TriangleMesh& mesh, const SurveyWishes& wishes,
                         const std::string& name = "flawed.stl") {
  const ScratchFile file(
      name, name.ends_with(".stl") ? binary_stl_of(mesh) : three_mf(model_xml(mesh, "inch")));
  try {
    surveyed(file.path(), wishes);
  } catch (const UserError& error) {
    return error.parts().field + ": " + error.parts().problem;
  }
  return "no complaint";
}

}  // namespace

TEST_CASE("a notch that lowers the brim is told, with its place and how far", "[survey][rim]") {
  // 4 mm wide, its bottom at 19 mm of 25.
  const TriangleMesh jug =
      cells({40, 30, 25}, {block, hollow, {false, {18, 28, 19}, {22, 30, 25}}});
  const ScratchFile file("jug.stl", binary_stl_of(jug));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::body));
  REQUIRE(survey.hollows.size() == 1);
  CHECK_THAT(survey.hollows[0].curve.brimful() / millilitre,
             WithinRel(36 * 26 * 17 / 1000.0, 1e-9));
  CHECK(says(survey, "6 mm below most of its rim"));
  REQUIRE(survey.hollows[0].spills_at_mm);
  const auto [x, y, z] = *survey.hollows[0].spills_at_mm;
  CHECK(x >= 18);
  CHECK(x <= 22);
  CHECK(y >= 28);
  CHECK(z == 19);
  CHECK(survey.hollows[0].rim_highest_mm == 25);
}

TEST_CASE("a hole half way up a wall is told as what lowers the brim", "[survey][rim]") {
  const TriangleMesh pierced =
      cells({40, 30, 25}, {block, hollow, {false, {18, 28, 12}, {22, 30, 15}}});
  const ScratchFile file("pierced.stl", binary_stl_of(pierced));
  CHECK(says(surveyed(file.path(), in_mm(Role::body)), "13 mm below most of its rim"));
}

TEST_CASE("a rim that slopes is told, with how much", "[survey][rim]") {
  TriangleMesh cup = turned({{0, 0}, {30, 0}, {30, 40}, {27, 40}, {27, 3}, {0, 3}}, 64);
  for (auto& [x, y, z] : cup.vertices_mm)
    if (z == 40) z += x / 10;  // from 37 to 43 outside, 37.3 to 42.7 inside
  const ScratchFile file("slope.stl", binary_stl_of(cup));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::body));
  CHECK(says(survey, "the rim is not level and stands up to 5.7 mm higher elsewhere"));
  CHECK_THAT(survey.hollows[0].rim_highest_mm, WithinAbs(43, 0.01));  // the outer edge
}

TEST_CASE("a level rim is not talked about, whatever the wall is cut into", "[survey][rim]") {
  const auto mesh =
      GENERATE(cells({40, 30, 25}, {block, hollow}),
               turned({{0, 0}, {30, 0}, {34, 40}, {31, 40}, {27, 3}, {0, 3}}, 64),
               refined(turned({{0, 0}, {30, 0}, {34, 40}, {31, 40}, {27, 3}, {0, 3}}, 64)));
  const ScratchFile file("level.stl", binary_stl_of(mesh));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::body));
  CHECK_FALSE(says(survey, "rim"));
  CHECK(survey.hollows[0].rim_highest_mm == survey.hollows[0].brim_mm);
}

TEST_CASE("joint basins within each other are each told", "[survey][basins]") {
  // Three pockets of 10 x 26 mm; a wall of 3 mm up to 15 mm, one up to 20 mm, the rim at 25 mm.
  const TriangleMesh tray = cells({40, 30, 25}, {block,
                                                 {false, {2, 2, 2}, {12, 28, 25}},
                                                 {false, {15, 2, 2}, {25, 28, 25}},
                                                 {false, {28, 2, 2}, {38, 28, 25}},
                                                 {false, {12, 2, 15}, {15, 28, 25}},
                                                 {false, {25, 2, 20}, {28, 28, 25}}});
  const PocketSurvey survey = pockets_of_body(tray);
  REQUIRE(survey.pockets.size() == 3);
  REQUIRE(survey.basins.size() == 2);
  const JointBasin &two = survey.basins[0], &all = survey.basins[1];
  CHECK(two.pockets.size() == 2);
  CHECK(two.brim_mm == 20);
  // Two pockets up to 20 mm, and what lies over the wall between them from 15.
  CHECK_THAT(two.brimful / cubic_millimetre, WithinRel(2 * 10 * 26 * 18.0 + 3 * 26 * 5, 1e-12));
  CHECK(all.pockets == std::vector<std::size_t>{0, 1, 2});
  CHECK(all.brim_mm == 25);
  CHECK_THAT(all.brimful / cubic_millimetre,
             WithinRel(3 * 10 * 26 * 23.0 + 3 * 26 * 10 + 3 * 26 * 5, 1e-12));
  for (const Pocket& pocket : survey.pockets) CHECK(pocket.basin == 1);
}

TEST_CASE("a scan's noise does not make the top face part of the opening", "[survey][noise]") {
  // A cup of 32 sides in a wide flange, all corners off by up to 0.1 mm in height.
  const std::uint32_t sides = 32;
  std::vector<Turned> profile = {{0, 0}, {60, 0}, {60, 30}};
  for (int r = 58; r >= 26; r -= 2) profile.push_back({static_cast<double>(r), 30});
  profile.push_back({25, 30});
  for (int z = 29; z >= 5; z -= 2) profile.push_back({25 - 0.1 * (30 - z), static_cast<double>(z)});
  profile.push_back({0, 5});
  TriangleMesh scan = refined(turned(profile, sides));
  std::mt19937 random(7);
  const auto seed = GENERATE(7U, 11U, 23U, 42U);
  random.seed(seed);
  TriangleMesh shared = scan;
  {
    const ScratchFile file("even.stl", binary_stl_of(scan));
    shared = surveyed(file.path(), in_mm(Role::body)).mesh;
  }
  for (auto& vertex : shared.vertices_mm)
    vertex[2] += 0.2 * (static_cast<double>(random()) / 4294967296.0 - 0.5);
  const ScratchFile file("noisy.stl", binary_stl_of(shared));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::body));
  REQUIRE(survey.hollows.size() == 1);
  const double opening_mm2 = polygon_share(sides) * pi * 25 * 25;
  CHECK_THAT(survey.hollows[0].opening / square_millimetre, WithinRel(opening_mm2, 0.006));
  CHECK_FALSE(says(survey, "rim"));
}

TEST_CASE("a hollow shut up inside a cavity is told, with its volume", "[survey]") {
  const TriangleMesh solid =
      together(box({0, 0, 0}, {60, 40, 25}), inside_out(box({10, 10, 5}, {30, 30, 15})));
  const ScratchFile file("void.stl", binary_stl_of(solid));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::cavity));
  CHECK_THAT(survey.hollows[0].curve.brimful() / millilitre, WithinRel(60.0 - 4.0, 1e-9));
  CHECK(says(survey, "1 sealed hollow (no way in), 4.0 ml in all"));
}

TEST_CASE("the place named is where the flaw is, in the file's own numbers and axes",
          "[survey][place]") {
  // A lid is missing from a box: all of it lies at z = 25 in the file, whichever way is up.
  TriangleMesh open = box({0, 0, 0}, {60, 40, 25});
  std::erase_if(open.triangles, [&](const auto& facet) {
    return std::all_of(facet.begin(), facet.end(),
                       [&](std::uint32_t v) { return open.vertices_mm[v][2] == 25; });
  });
  const auto up = GENERATE(Axis::plus_z, Axis::minus_z, Axis::plus_y, Axis::minus_y, Axis::plus_x,
                           Axis::minus_x);
  const auto unit = GENERATE(LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::inch);
  SurveyWishes wishes = in_mm(Role::body);
  wishes.reading.up = up;
  wishes.reading.unit = unit;
  const std::string text = complaint_of(open, wishes);
  CAPTURE(text);
  const auto places = numbers_in(text);
  REQUIRE(places.size() == 1);
  CHECK(places[0] == std::array<double, 3>{30, 20, 25});
  CHECK_THAT(text, Contains(") " + name_of(unit)));
}

TEST_CASE("a leaning mesh's places are turned back too", "[survey][place]") {
  TriangleMesh open = box({0, 0, 0}, {60, 40, 25});
  open.triangles.pop_back();
  open.triangles.pop_back();  // the wall at x = 0
  SurveyWishes wishes = in_mm(Role::body);
  wishes.reading.straight_up = direction("0.1,0.2,0.97", {});
  const auto places = numbers_in(complaint_of(open, wishes));
  REQUIRE(places.size() == 1);
  CHECK_THAT(places[0][0], WithinAbs(0, 0.011));
  CHECK_THAT(places[0][1], WithinAbs(20, 0.011));
  CHECK_THAT(places[0][2], WithinAbs(12.5, 0.011));
}

TEST_CASE("where a surface crosses itself, the place named lies on the crossing",
          "[survey][place]") {
  // A long thin spike of one corner comes out through the opposite wall at z = 90 of 100: the
  // facets that meet are 100 mm long, and their middles far from there.
  TriangleMesh column = box({0, 0, 0}, {20, 20, 100});
  const std::array<double, 3> corner = {0, 0, 100};
  for (auto& vertex : column.vertices_mm)
    if (vertex == corner) vertex = {30, 10, 95};
  const std::string text = complaint_of(column, in_mm(Role::cavity));
  CAPTURE(text);
  const auto places = numbers_in(text);
  REQUIRE(places.size() == 1);
  // Through the wall x = 20, or the top at z = 100: both within the top tenth.
  CHECK(places[0][2] > 60);
  const bool on_wall = std::abs(places[0][0] - 20) < 0.02 || std::abs(places[0][2] - 100) < 0.02;
  CHECK(on_wall);
}
