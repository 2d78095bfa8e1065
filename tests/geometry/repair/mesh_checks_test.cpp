#include "geometry/repair/mesh_checks.h"

#include "geometry/levels/level_curve.h"
#include "geometry/surface/enclosed_volume.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <limits>
#include <string>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using test::box;
using test::inside_out;
using test::moved;
using test::together;
using test::without_sharing;

double ml(const TriangleMesh& mesh) { return enclosed_volume(mesh) / millilitre; }

TriangleMesh cube(double x, double size) { return box({x, 0, 0}, {x + size, size, size}); }

TriangleMesh without_facet(TriangleMesh mesh, std::size_t facet) {
  mesh.triangles.erase(mesh.triangles.begin() + static_cast<std::ptrdiff_t>(facet));
  return mesh;
}

TriangleMesh with_facet(TriangleMesh mesh, std::array<std::uint32_t, 3> facet) {
  mesh.triangles.push_back(facet);
  return mesh;
}

TriangleMesh with_one_turned(TriangleMesh mesh) {
  std::swap(mesh.triangles[5][1], mesh.triangles[5][2]);
  return mesh;
}

TriangleMesh with_coordinate(TriangleMesh mesh, double number) {
  mesh.vertices_mm[mesh.triangles[4][1]][1] = number;
  return mesh;
}

/// A block whose top corner was pulled down through its bottom.
TriangleMesh pulled_through() {
  TriangleMesh mesh = test::refined(box({0, 0, 0}, {10, 10, 10}));
  for (auto& p : mesh.vertices_mm) {
    if (p == test::Point{5, 5, 10}) p = {4, 6, -3};
  }
  return mesh;
}

TEST_CASE("a mesh that bounds no solid is refused with place and reason", "[geometry]") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const double infinite = std::numeric_limits<double>::infinity();
  const TriangleMesh sheet{{{0, 0, 0}, {10, 1, 2}, {3, 10, 5}}, {{0, 1, 2}, {0, 2, 1}}};
  const TriangleMesh flat{{{0, 0, 5}, {9, 0, 5}, {0, 9, 5}}, {{0, 1, 2}, {0, 2, 1}}};
  const TriangleMesh point{{{0, 0, 0}, {1, 2, 3}}, {{0, 0, 1}}};
  const auto [mesh, says] = GENERATE_COPY(table<TriangleMesh, std::string>({
      {TriangleMesh{}, "holds no facets"},
      {TriangleMesh{{{0, 0, 0}}, {}}, "holds no facets"},
      {with_coordinate(without_sharing(cube(0, 10)), nan),
       "facet 5: has a corner that is not a number"},
      {with_coordinate(cube(0, 10), -infinite), "not a number"},
      {with_facet(cube(0, 10), {0, 1, 99}), "facet 13: has a corner that is not there"},
      {flat, "flat: it has no size along z"},
      {sheet, "encloses no volume"},
      {point, "encloses no volume"},
      // facet 1 of a box is half its floor: three edges lack their neighbour
      {without_facet(cube(0, 10), 0), "is open: 3 edges have"},
      {without_facet(cube(0, 10), 0), "at ("},
      {without_facet(without_sharing(cube(0, 10)), 7), "is open: 3 edges have"},
      {with_one_turned(cube(0, 10)), "turned against their neighbours at 3 edges"},
      // two boxes that share an edge: four facets meet in it
      {together(cube(0, 10), box({10, 10, 0}, {20, 20, 10})),
       "more than two facets meet at 1 edge"},
      {together(cube(0, 10), cube(0, 10)), "more than two facets meet"},
      {together(cube(0, 10), moved(cube(5, 10), {0, 1, 1})), "parts that overlap or touch"},
      {together(cube(0, 10), cube(5, 10)), "parts that overlap or touch"},
      {together(cube(0, 10), moved(cube(10, 10), {0, 2, 2})), "parts that overlap or touch"},
      {pulled_through(), "crosses itself"},
      {together(cube(0, 30), moved(cube(10, 5), {0, 10, 10})), "lies inside another"},
      {together(cube(0, 30), inside_out(cube(50, 10))), "inside out, unlike the others"},
  }));
  INFO(says);
  try {
    checked_solid(mesh, "cup.stl");
    FAIL("not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().file == "cup.stl");
    CHECK_FALSE(error.parts().remedy.empty());
    CHECK_THAT(error.what(), Contains(says));
  }
}

TEST_CASE("the first open edge is named by its middle", "[geometry]") {
  // The floor's half with corners (0, 0), (10, 10), (10, 0): its longest edge has its middle at
  // 5, 5.
  const TriangleMesh mesh = without_facet(cube(0, 10), 1);
  CHECK_THROWS_WITH(checked_solid(mesh, "cup.stl"), Contains("cup.stl: at (5, 5, 0) mm: is open"));
}

TEST_CASE("a sound solid passes without a remark", "[geometry]") {
  const TriangleMesh hollow = together(cube(0, 30), inside_out(moved(cube(10, 5), {0, 10, 10})));
  const auto [mesh, expected_ml] = GENERATE_COPY(table<TriangleMesh, double>({
      {cube(-5, 10), 1},
      {without_sharing(cube(-5, 10)), 1},
      {together(cube(0, 10), cube(20, 10)), 2},
      {hollow, 27 - 0.125},  // a cube of 30 with a cube of 5 left out of its middle
      {together(hollow, moved(cube(11, 3), {0, 11, 11})), 27 - 0.125 + 0.027},
  }));
  const CheckedSolid checked = checked_solid(mesh, "cup.stl");
  CHECK(checked.remarks.empty());
  CHECK_THAT(ml(checked.solid), WithinRel(expected_ml, 1e-12));
}

TEST_CASE("an inside-out mesh is turned, and said so", "[geometry]") {
  const CheckedSolid checked = checked_solid(inside_out(cube(0, 10)), "cup.stl");
  CHECK_THAT(ml(checked.solid), WithinRel(1.0, 1e-12));
  REQUIRE(checked.remarks.size() == 1);
  CHECK_THAT(checked.remarks[0].text, Contains("inside out"));
}

TEST_CASE("facets collapsed to a line are left away, and said so", "[geometry]") {
  // Two corners of this facet lie in one place, as after rounding: a sliver in an edge of the cube.
  TriangleMesh mesh = cube(0, 10);
  mesh.vertices_mm.push_back(mesh.vertices_mm[0]);
  const auto extra = static_cast<std::uint32_t>(mesh.vertices_mm.size() - 1);
  mesh.triangles.push_back({0, 1, extra});
  const CheckedSolid checked = checked_solid(mesh, "cup.stl");
  CHECK(checked.solid.triangles.size() == 12);
  CHECK(checked.solid.vertices_mm.size() == 8);
  REQUIRE(checked.remarks.size() == 1);
  CHECK_THAT(checked.remarks[0].text,
             Contains("1 facet without area left out, with two corners in one place"));
}

TEST_CASE("vertices are joined by place, zero and minus zero alike", "[geometry]") {
  TriangleMesh mesh = without_sharing(cube(0, 10));
  for (std::size_t i = 0; i < mesh.vertices_mm.size(); i += 2) {
    for (double& coordinate : mesh.vertices_mm[i]) {
      if (coordinate == 0) coordinate = -0.0;
    }
  }
  CHECK(checked_solid(mesh, "cup.stl").solid.vertices_mm.size() == 8);
}

TEST_CASE("slivers of no width along an edge do not condemn a mesh", "[geometry]") {
  // As modellers close a T-junction: vertex 8 halves the edge 0-1 on one side, and the facet 0-8-1
  // of no area fills the slit; all lie in line, so the solid is the cube.
  TriangleMesh mesh = cube(0, 10);
  mesh.vertices_mm.push_back({5, 0, 0});
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    const auto [a, b, c] = mesh.triangles[i];
    if (a == 0 && b == 1) {  // the side's facet; the floor keeps its long edge
      mesh.triangles[i] = {0, 8, c};
      mesh.triangles.push_back({8, 1, c});
      mesh.triangles.push_back({0, 1, 8});
      break;
    }
  }
  const CheckedSolid checked = checked_solid(mesh, "cup.stl");
  CHECK_THAT(ml(checked.solid), WithinRel(1.0, 1e-12));
  CHECK_THAT(LevelCurve::of_solid(checked.solid).volume_below(5 * millimetre) / millilitre,
             WithinRel(0.5, 1e-12));
  REQUIRE(checked.remarks.size() == 1);
  CHECK_THAT(checked.remarks[0].text, Contains("graze"));
}

TEST_CASE("a cup of four thousand sides, its lids fans of needles, is checked", "[geometry]") {
  const TriangleMesh many = test::turned({{30, 0}, {35, 40}}, 4000);
  CHECK_THAT(ml(checked_solid(many, "cup.stl").solid) / ml(many), WithinRel(1.0, 1e-12));
}

TEST_CASE("checking changes no volume of a sound solid", "[geometry][law]") {
  rc::prop("joining corners keeps the solid", [] {
    const auto sides = *rc::gen::inRange<std::uint32_t>(3, 30);
    const double bulge = *rc::gen::inRange(1, 40);
    const TriangleMesh solid = test::turned({{20, 0}, {bulge, 7}, {15, 20}}, sides);
    const CheckedSolid checked = checked_solid(without_sharing(solid), "cup.stl");
    RC_ASSERT(checked.remarks.empty());
    RC_ASSERT(checked.solid.vertices_mm.size() == solid.vertices_mm.size());
    RC_ASSERT(std::abs(ml(checked.solid) - ml(solid)) <= 1e-12 * ml(solid));
  });
}

}  // namespace
}  // namespace brimwright::geometry
