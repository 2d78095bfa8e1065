#include "geometry/surface/enclosed_volume.h"
#include "mesh_writers.h"
#include "moulds/mesh_survey.h"
#include "scratch_file.h"
#include "solids.h"
#include "survey_wishes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::geometry {

using namespace moulds;

namespace {

struct Whole {
  std::string name;
  TriangleMesh mesh;
  double pocket_mm3;  // what the whole body or skin holds
};

/// A block of 60 x 40 x 30 mm with a pocket of 50 x 30 x 25 mm.
TriangleMesh block_with_pocket() {
  TriangleMesh mesh;
  for (const double z : {0.0, 30.0})
    for (const auto& [x, y] : {std::pair{0, 0}, {60, 0}, {60, 40}, {0, 40}})
      mesh.vertices_mm.push_back({double(x), double(y), z});
  for (const double z : {5.0, 30.0})
    for (const auto& [x, y] : {std::pair{5, 5}, {55, 5}, {55, 35}, {5, 35}})
      mesh.vertices_mm.push_back({double(x), double(y), z});
  const auto quad = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
  };
  quad(3, 2, 1, 0);
  quad(8, 9, 10, 11);
  for (std::uint32_t i = 0; i < 4; ++i) {
    const std::uint32_t next = (i + 1) % 4;
    quad(i, next, 4 + next, 4 + i);            // outside
    quad(4 + i, 4 + next, 12 + next, 12 + i);  // rim
    quad(8 + next, 8 + i, 12 + i, 12 + next);  // pocket
  }
  return mesh;
}

TriangleMesh without_lid(TriangleMesh solid, double top) {
  std::erase_if(solid.triangles, [&](const auto& facet) {
    return std::all_of(facet.begin(), facet.end(),
                       [&](std::uint32_t v) { return solid.vertices_mm[v][2] >= top - 1e-9; });
  });
  return solid;
}

std::vector<Whole> wholes() {
  const TriangleMesh cup = test::turned({{20, 0}, {25, 30}, {22, 30}, {17, 4}}, 8);
  // A frustum of pyramids on regular octagons: h/3 (A + sqrt(A a) + a), A = 2 sqrt(2) r^2.
  const auto frustum = [](double r, double s, double h) {
    return h / 3 * 2 * std::sqrt(2.0) * (r * r + r * s + s * s);
  };
  const TriangleMesh tub = test::turned({{17, 0}, {22, 26}}, 8);
  return {{"a block with a pocket", block_with_pocket(), 50.0 * 30 * 25},
          {"a cup", cup, frustum(17, 22, 26)},
          {"a box's skin", without_lid(test::box({0, 0, 0}, {50, 30, 20}), 20), 50.0 * 30 * 20},
          {"a tub's skin", without_lid(tub, 26), frustum(17, 22, 26)},
          {"a box", test::box({0, 0, 0}, {50, 30, 20}), 50.0 * 30 * 20},
          {"a tub", tub, frustum(17, 22, 26)}};
}

}  // namespace

TEST_CASE("a facet missing anywhere is mended, tells its place, or leaves less to fill, never more",
          "[geometry][survey]") {
  // A body with a facet of its pocket missing, read as a skin, held its own stuff as well, and
  // could not be cut at its brim.
  const auto whole = GENERATE(from_range(wholes()));
  const auto role =
      GENERATE(values<std::optional<Role>>({Role::cavity, Role::body, Role::skin, {}}));
  const double solid_mm3 =
      std::max(whole.pocket_mm3, enclosed_volume(whole.mesh) / cubic_millimetre);
  for (std::size_t missing = 0; missing < whole.mesh.triangles.size(); ++missing) {
    TriangleMesh mesh = whole.mesh;
    mesh.triangles.erase(mesh.triangles.begin() + static_cast<std::ptrdiff_t>(missing));
    const test::ScratchFile file("body.stl", test::binary_stl(mesh));
    INFO(whole.name << (role ? " as " + name_of(*role) : "") << " without facet " << missing);
    try {
      const MeshSurvey survey = surveyed(file.path(), moulds::test::in_mm(role));
      REQUIRE(!survey.hollows.empty());
      for (std::size_t i = 0; i < survey.hollows.size(); ++i) {
        const double most = survey.role == Role::cavity ? solid_mm3 : whole.pocket_mm3;
        const double holds = survey.hollows[i].curve.brimful() / cubic_millimetre;
        CHECK(holds <= most * (1 + 1e-6));
        CHECK(std::abs(enclosed_volume(solid_of(survey, i)) / cubic_millimetre - holds) <=
              1e-6 * most);
      }
    } catch (const UserError& refused) {
      CHECK(refused.parts().file == file.path());
    }
  }
}

TEST_CASE("a body open in its pocket, read as a skin, is refused with the place of the hole",
          "[geometry][survey]") {
  TriangleMesh mesh = block_with_pocket();
  mesh.triangles.erase(mesh.triangles.begin() + 2);  // of the pocket's floor
  const test::ScratchFile file("block.stl", test::binary_stl(mesh));
  // Its corners are (5, 5, 5), (55, 5, 5) and (55, 35, 5).
  CHECK_THROWS_WITH(surveyed(file.path(), moulds::test::in_mm(Role::skin)),
                    Catch::Contains("at (38.33, 15, 5) mm: is open") &&
                        Catch::Contains("hold liquid on both sides") &&
                        Catch::Contains("role \"body\""));
}

}  // namespace brimwright::geometry
