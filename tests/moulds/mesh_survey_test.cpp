#include "moulds/mesh_survey.h"

#include "geometry/files/mesh_writing.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/sections/facet_deficit.h"
#include "geometry/surface/enclosed_volume.h"
#include "scratch_file.h"
#include "solids.h"
#include "survey_wishes.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace brimwright;
using namespace brimwright::geometry;
using namespace brimwright::moulds;
using namespace brimwright::geometry::test;
using namespace brimwright::moulds::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::string samples = BRIMWRIGHT_SOURCE_DIR "/tests/data/meshes/";

/// A square tube 40 mm outside, 30 mm inside, 20 mm high, open at both ends: eight quads a side
/// pair.
TriangleMesh square_tube() {
  TriangleMesh mesh;
  for (const double z : {0.0, 20.0})
    for (const double r : {20.0, 15.0})
      for (const auto& [x, y] : {std::pair{-r, -r}, {r, -r}, {r, r}, {-r, r}})
        mesh.vertices_mm.push_back({x, y, z});
  const auto quad = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
  };
  for (std::uint32_t i = 0; i < 4; ++i) {
    const std::uint32_t j = (i + 1) % 4;
    quad(i, j, 8 + j, 8 + i);            // outer wall
    quad(4 + j, 4 + i, 12 + i, 12 + j);  // inner wall
    quad(8 + i, 8 + j, 12 + j, 12 + i);  // upper rim
    quad(4 + i, 4 + j, j, i);            // lower rim
  }
  return mesh;
}

}  // namespace

TEST_CASE("each sample mesh is known for what it is, and holds what its truth says", "[survey]") {
  // Truth: exact volumes of the facetted solids, polygon areas linear in z integrated in closed
  // form; slab4_body cross-checked with an independent boolean library
  // (tests/data/meshes/README.md).
  struct Row {
    const char* file;
    Role role;
    std::size_t hollows;
    double brimful_ml, floor_mm, brim_mm, opening_mm2;
  };
  const auto row = GENERATE(values<Row>({
      {"fluted_cup_cavity.stl", Role::cavity, 1, 43.0280863, 0, 28, 2122.93108},
      {"slab4_body.stl", Role::body, 4, 59.2211276, 6, 31, 2560.1856},
      {"loaf_skin.stl", Role::skin, 1, 788.723163, 0, 65, 13595.0921},
  }));
  CAPTURE(row.file);
  const MeshSurvey survey = surveyed(samples + row.file, in_mm());
  CHECK(survey.role == row.role);
  REQUIRE(survey.hollows.size() == row.hollows);
  for (std::size_t i = 0; i < row.hollows; ++i) {
    const Hollow& hollow = survey.hollows[i];
    CHECK_THAT(hollow.curve.brimful() / millilitre, WithinRel(row.brimful_ml, 1e-6));
    CHECK_THAT(hollow.floor_mm, WithinAbs(row.floor_mm, 1e-5));
    CHECK_THAT(hollow.brim_mm, WithinAbs(row.brim_mm, 1e-5));
    CHECK_THAT(hollow.opening / square_millimetre, WithinRel(row.opening_mm2, 1e-5));
    CHECK_THAT(enclosed_volume(solid_of(survey, i)) / millilitre, WithinRel(row.brimful_ml, 1e-6));
    CHECK_NOTHROW(checked_solid(solid_of(survey, i), "hollow"));
    REQUIRE(hollow.trapped_air);
    CHECK_THAT(*hollow.trapped_air / millilitre, WithinAbs(0, 1e-9));
  }
}

TEST_CASE("a mould turned the wrong way up is asked about, with what to say", "[survey]") {
  SurveyWishes wishes = in_mm();
  wishes.reading.up = Axis::minus_z;
  CHECK_THROWS_WITH(surveyed(samples + "slab4_body.stl", wishes),
                    Contains("with up \"+z\" it has 4 cavities") && Contains("role \"cavity\""));
  wishes.role = Role::body;
  CHECK_THROWS_WITH(surveyed(samples + "slab4_body.stl", wishes),
                    Contains("holds no liquid this way up; with up \"+z\" it has 4 cavities"));
  wishes.role = Role::cavity;  // the person's word wins: 274.61549 ml of body, by its truth
  const MeshSurvey survey = surveyed(samples + "slab4_body.stl", wishes);
  CHECK_THAT(survey.hollows.front().curve.brimful() / millilitre, WithinRel(274.61549, 1e-6));
}

TEST_CASE("a mould that leans is told by how much, and stands straight as it was told to",
          "[survey]") {
  MeshFile slab = read_mesh(samples + "slab4_body.stl", in_mm().reading);
  const double lean = 3 * pi / 180;
  for (auto& [x, y, z] : slab.mesh.vertices_mm) {
    const double across = std::cos(lean) * x + std::sin(lean) * z;
    z = -std::sin(lean) * x + std::cos(lean) * z;
    x = across;
  }
  const ScratchFile file("leaning.stl", binary_stl_of(slab.mesh));
  SurveyWishes wishes = in_mm(Role::body);
  const MeshSurvey leaning = surveyed(file.path(), wishes);
  CHECK(says(leaning, "leans 3.0° from level"));
  CHECK(leaning.hollows.front().curve.brimful() < 59 * millilitre);  // it spills at the low side
  wishes.reading.straight_up =
      direction("0.0523360,0,0.9986295", {});  // sine and cosine of 3 degrees
  const MeshSurvey straight = surveyed(file.path(), wishes);
  CHECK_FALSE(says(straight, "leans"));
  CHECK_THAT(straight.hollows.front().curve.brimful() / millilitre, WithinRel(59.2211276, 1e-4));
}

TEST_CASE("a tube holds nothing until it stands on a board", "[survey]") {
  const ScratchFile file("tube.stl", binary_stl_of(square_tube()));
  SurveyWishes wishes = in_mm(Role::body);
  CHECK_THROWS_WITH(surveyed(file.path(), wishes), Contains("stand it on a board with on-board"));
  wishes.on_board = true;
  const MeshSurvey survey = surveyed(file.path(), wishes);
  REQUIRE(survey.hollows.size() == 1);
  // 30 x 30 x 20 mm is 18 ml; the board reaches 0.001 mm into it.
  CHECK_THAT(survey.hollows.front().curve.brimful() / millilitre, WithinRel(18.0, 1e-4));
}

TEST_CASE("a broken hollow is mended, and the mend is told", "[survey]") {
  MeshFile cup = read_mesh(samples + "fluted_cup_cavity.stl", in_mm().reading);
  cup.mesh.triangles.erase(cup.mesh.triangles.begin() + 100);  // one facet of 288 lost
  const ScratchFile file("holed.stl", binary_stl_of(cup.mesh));
  const MeshSurvey survey = surveyed(file.path(), in_mm(Role::cavity));
  CHECK_THAT(survey.hollows.front().curve.brimful() / millilitre, WithinRel(43.0280863, 1e-5));
  CHECK_FALSE(survey.remarks.empty());
}

TEST_CASE("coarse facets in place of a round wall are told with what they cost", "[survey]") {
  // An n-gon holds (n / 2 pi) sin(2 pi / n) of its circle: 1.14 % short for 24 sides, 0.29 %
  // for 48.
  const int sides = GENERATE(12, 24, 48, 200);
  const double deficit = 1 - sides / (2 * pi) * std::sin(2 * pi / sides);
  const TriangleMesh prism = turned({{30, 0}, {30, 25}}, static_cast<std::uint32_t>(sides));
  CHECK_THAT(facet_deficit(prism).of_one(), WithinRel(deficit, 0.04));
  // Walls that are meant flat: a square has no deficit.
  CHECK(facet_deficit(turned({{30, 0}, {30, 25}}, 4)).of_one() == 0);
}
