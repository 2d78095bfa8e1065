#include "geometry/sections/plane_cut.h"

#include "geometry/levels/level_curve.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <numbers>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

/// Signed area inside a closed line as seen from above its plane (half the sum of cross products).
double area_in(const ClosedLine& line, const std::array<double, 3>& normal) {
  double area = 0;
  const auto& origin = line.front();
  for (std::size_t i = 0; i < line.size(); ++i) {
    std::array<double, 3> a, b;
    for (std::size_t k = 0; k < 3; ++k) {
      a[k] = line[i][k] - origin[k];
      b[k] = line[(i + 1) % line.size()][k] - origin[k];
    }
    area += normal[0] * (a[1] * b[2] - a[2] * b[1]) + normal[1] * (a[2] * b[0] - a[0] * b[2]) +
            normal[2] * (a[0] * b[1] - a[1] * b[0]);
  }
  return area / 2;
}

double area_in(const std::vector<ClosedLine>& lines, const Plane& plane) {
  double area = 0;
  for (const ClosedLine& line : lines) area += area_in(line, plane.normal);
  return area;
}

}  // namespace

TEST_CASE("a box is cut into one rectangle, run anticlockwise as seen from above", "[geometry]") {
  const TriangleMesh box = test::box({10, 20, 30}, {50, 90, 60});
  struct Row {
    Plane plane;
    double area;
  };
  const Row cut = GENERATE(values<Row>({
      {Plane::level(41), 40.0 * 70},
      {{{1, 0, 0}, 25}, 70.0 * 30},
      {{{0, -1, 0}, -33}, 40.0 * 30},
      {{{0.6, 0.8, 0}, 0.6 * 30 + 0.8 * 55}, 50.0 * 30},  // through the middle: 40 / 0.8 long
  }));
  const auto lines = plane_section(box, cut.plane);
  REQUIRE(lines.size() == 1);
  CHECK_THAT(area_in(lines, cut.plane), WithinRel(cut.area, 1e-13));
  for (const auto& [x, y, z] : lines.front()) {
    const auto& n = cut.plane.normal;
    CHECK_THAT(n[0] * x + n[1] * y + n[2] * z, WithinAbs(cut.plane.offset_mm, 1e-12));
  }
}

TEST_CASE("a plane on a facet shows the section just below it, the flipped plane the one above",
          "[geometry]") {
  // Squares by half their diagonals, 10 and 30 mm: 200 and 1800 mm2. They meet at 4 mm.
  const TriangleMesh widening = test::turned({{10, 0}, {10, 4}, {30, 4}, {30, 9}}, 4);
  const TriangleMesh narrowing = test::turned({{30, 0}, {30, 4}, {10, 4}, {10, 9}}, 4);
  const Plane ledge = Plane::level(4);
  CHECK_THAT(area_in(plane_section(widening, ledge), ledge), WithinRel(200.0, 1e-12));
  CHECK_THAT(area_in(plane_section(widening, ledge.flipped()), ledge), WithinRel(-1800.0, 1e-12));
  CHECK_THAT(area_in(plane_section(narrowing, ledge), ledge), WithinRel(1800.0, 1e-12));
  CHECK_THAT(area_in(plane_section(narrowing, ledge.flipped()), ledge), WithinRel(-200.0, 1e-12));
}

TEST_CASE("at its lowest a solid has nothing below and its floor above", "[geometry]") {
  const TriangleMesh cup = test::obelisk(40, 30, 60, 50, 20);
  CHECK(plane_section(cup, Plane::level(0)).empty());
  const Plane floor = Plane::level(0).flipped(), brim = Plane::level(20);
  CHECK_THAT(area_in(plane_section(cup, floor), floor), WithinRel(40.0 * 30, 1e-13));
  CHECK_THAT(area_in(plane_section(cup, brim), brim), WithinRel(60.0 * 50, 1e-13));
  CHECK(plane_section(cup, brim.flipped()).empty());
}

TEST_CASE("a ring cut level has an outer border and a hole, cut upright two borders",
          "[geometry]") {
  const TriangleMesh ring = test::torus(30, 8, 12, 20);
  const auto level = plane_section(ring, Plane::level(0.5));
  REQUIRE(level.size() == 2);
  const double one = area_in(level[0], {0, 0, 1}), other = area_in(level[1], {0, 0, 1});
  CHECK(one * other < 0);
  // Through the axis the plane holds a row of vertices and edges on either side.
  const Plane upright{{0, 1, 0}, 0};
  const auto across = plane_section(ring, upright);
  REQUIRE(across.size() == 2);
  for (const auto& line : across) {
    // The tube's own 12-sided section, 12 / 2 r^2 sin(2 pi / 12).
    CHECK_THAT(area_in(line, upright.normal), WithinRel(6 * 64 * std::sin(pi / 6), 1e-12));
  }
}

TEST_CASE("a level's section is as large as the free surface there", "[geometry][law]") {
  rc::prop("the section's area is the level curve's slope", [] {
    const auto sides = *rc::gen::inRange<std::uint32_t>(3, 9);
    std::vector<test::Turned> profile = {{*rc::gen::inRange(0, 20) * 1.0, 0}};
    double height = 0;
    for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
      height += *rc::gen::inRange(1, 9);
      profile.push_back({*rc::gen::inRange(1, 40) * 1.0, height});
    }
    const TriangleMesh solid = test::turned(profile, sides);
    // Whole heights meet the rings of vertices; the level curve answers for just above them.
    const double z = *rc::gen::inRange(0, static_cast<int>(4 * height)) / 4.0;
    const Plane plane = Plane::level(z).flipped();
    const double surface =
        LevelCurve::of_solid(solid).free_surface(z * millimetre) / square_millimetre;
    const double section = area_in(plane_section(solid, plane), plane);
    RC_ASSERT(std::abs(section - surface) <= 1e-9 * (1 + surface));
  });
}

}  // namespace brimwright::geometry
