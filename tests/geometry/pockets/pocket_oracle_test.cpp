// CGAL as a second opinion on pockets: a box round the body up to a level, less the body, is the
// air below that level; the part of it that lies on a pocket's floor is what the pocket holds.

#include "cgal_booleans.h"
#include "geometry/files/mesh_file.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"
#include "random_bodies.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;
using test::as_cgal;
using test::Kernel;
using Mesh = test::CgalMesh;

/// The volume of that part of the air below `level` which touches the body at `floor_at`.
double air_by_difference(const TriangleMesh& body, const test::Point& floor_at, double level) {
  const Box size = bounding_box(body);
  const test::Point &low = size.low_mm, &high = size.high_mm;
  const TriangleMesh air =
      test::box({low[0] - 1, low[1] - 1, low[2] - 1}, {high[0] + 1, high[1] + 1, level});
  const Kernel::Point_3 floor(floor_at[0], floor_at[1], floor_at[2]);
  std::vector<double> volumes;
  for (const Mesh& part : test::difference(as_cgal(air), as_cgal(body))) {
    const auto touches = [&](Mesh::Vertex_index v) { return part.point(v) == floor; };
    if (std::any_of(part.vertices().begin(), part.vertices().end(), touches))
      volumes.push_back(test::volume(part));
  }
  REQUIRE(volumes.size() == 1);
  return volumes.front();
}

TriangleMesh leaned(TriangleMesh body, double about_x, double about_y) {
  for (auto& [x, y, z] : body.vertices_mm) {
    const double up = std::sin(about_x) * y + std::cos(about_x) * z;
    y = std::cos(about_x) * y - std::sin(about_x) * z;
    z = std::cos(about_y) * up - std::sin(about_y) * x;
    x = std::cos(about_y) * x + std::sin(about_y) * up;
  }
  return body;
}

void check_by_difference(const TriangleMesh& body, const PocketSurvey& survey) {
  for (const double share : {0.35, 0.8}) {
    for (const Pocket& pocket : survey.pockets) {
      const double depth = share * (pocket.brim_mm - pocket.floor_mm);
      const double held = pocket.curve.volume_below(depth * millimetre) / cubic_millimetre;
      const double air = air_by_difference(body, pocket.floor_at_mm, pocket.floor_mm + depth);
      CHECK_THAT(held, WithinRel(air, 1e-7));  // corners of the cut rounded to doubles
    }
  }
}

TEST_CASE("CGAL, taking a tray out of a box, finds the same liquid in its pockets",
          "[geometry][pockets][oracle]") {
  const auto [path, pockets] = GENERATE(table<std::string, std::size_t>(
      {{"tests/data/meshes/slab4_body.stl", 4}, {"meshes/six_pocket_tray.stl", 6}}));
  MeshReading reading;
  reading.unit = LengthUnit::millimetre;
  const TriangleMesh tray = welded(read_mesh(BRIMWRIGHT_SOURCE_DIR "/" + path, reading).mesh);
  const double lean = GENERATE(0.0, 0.05);  // so that floors and rims are no longer level
  CAPTURE(path, lean);
  const TriangleMesh body = leaned(tray, lean, 0);
  const PocketSurvey survey = pockets_of_body(body);
  REQUIRE(survey.pockets.size() == pockets);
  check_by_difference(body, survey);
}

/// Five-sided, drafted.
TriangleMesh prism_cup() {
  return welded(test::turned({{20, 0}, {20, 30}, {12, 30}, {9, 5}, {0, 5}}, 5));
}

/// Seven-sided, with a groove round it under a sloping lip.
TriangleMesh grooved_cup() {
  return welded(
      test::turned({{20, 0}, {20, 30}, {10, 30}, {10, 20}, {16, 24}, {16, 5}, {0, 5}}, 7));
}

/// A square pocket with a notch in its rim, a bridge across it and a tip hanging from that.
TriangleMesh bridged_block() {
  return test::CellBody({20, 20, 12}, {{true, {0, 0, 0}, {20, 20, 12}},
                                       {false, {5, 5, 2}, {15, 15, 12}},
                                       {false, {0, 7, 9}, {5, 8, 12}},
                                       {true, {5, 9, 10}, {15, 11, 12}},
                                       {true, {9, 9, 6}, {11, 11, 10}}})
      .mesh();
}

TEST_CASE("CGAL finds the same liquid in small pockets that stand crooked",
          "[geometry][pockets][oracle]") {
  const TriangleMesh upright = GENERATE(prism_cup(), grooved_cup(), bridged_block());
  const auto [about_x, about_y] =
      GENERATE(table<double, double>({{0.4, 0.3}, {-0.2, 0.1}, {0.05, -0.6}}));
  CAPTURE(upright.triangles.size(), about_x, about_y);
  const TriangleMesh body = leaned(upright, about_x, about_y);
  const PocketSurvey survey = pockets_of_body(body);
  REQUIRE(survey.pockets.size() == 1);
  check_by_difference(body, survey);
}

}  // namespace
}  // namespace brimwright::geometry
