#include "geometry/levels/level_curve.h"

#include "solids.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>
#include <stdexcept>
#include <string>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::obelisk;
using test::polygon_share;
using test::turned;

// Volumes and areas of solids: D. Zwillinger, CRC Standard Mathematical Tables, chapter 4; the
// figures themselves are from a table of worked examples made and integrated numerically apart from
// this code.
constexpr double exactly = 1e-12;  // sums of a few hundred terms in double precision

double mm3(Volume v) { return v / cubic_millimetre; }
double mm2(Area a) { return a / square_millimetre; }
double mm(Length l) { return l / millimetre; }

TEST_CASE("solids hold what the handbook says they hold", "[geometry]") {
  constexpr std::uint32_t n = 360;
  const auto [name, solid, expected_mm3, tolerance] =
      GENERATE(table<std::string, TriangleMesh, double, double>(
          {// pi h / 3 (R^2 + R r + r^2) with R = 30, r = 40, h = 25, times the polygon's share
           {"frustum", turned({{30, 0}, {40, 25}}, n), 96865.773486 * polygon_share(n), 1e-11},
           // h / 3 (A + B + sqrt(A B)), square ends of 60 and 40, h = 30
           {"pyramid frustum", obelisk(60, 60, 40, 40, 30), 76000.0, exactly},
           // h / 6 (a b + (a + a1)(b + b1) + a1 b1), ends 80 x 60 and 60 x 30, h = 40
           {"obelisk", obelisk(80, 60, 60, 30, 40), 128000.0, exactly},
           // 4/3 pi a b c, semi-axes 40, 25, 15; inscribed, 256 sides and rings lose under 3e-4
           {"ellipsoid", test::stretched(test::ball(1, 256, 256), {40, 25, 15}), 62831.853072,
            3e-4},
           // 2 pi^2 R r^2 (Pappus), tube 10 on 30; inscribed, 360 and 256 sides lose under 3e-4
           {"torus", test::torus(30, 10, 256, n), 59217.626407, 3e-4},
           // n/2 r^2 sin(2 pi / n) h: a triangle and a hexagon of radius 20, 15 high
           {"three-sided prism", turned({{20, 0}, {20, 15}}, 3), 7794.228634059948, exactly},
           {"six-sided prism", turned({{20, 0}, {20, 15}}, 6), 15588.457268119896, exactly}}));
  INFO(name);
  CHECK_THAT(mm3(LevelCurve::of_solid(solid).brimful()), WithinRel(expected_mm3, tolerance));
}

TEST_CASE("a frustum filled part way holds the lower frustum", "[geometry]") {
  constexpr std::uint32_t n = 48;
  const LevelCurve curve = LevelCurve::of_solid(turned({{30, 7}, {40, 32}}, n));
  for (const double h : {0.001, 1.0, 5.0, 12.5, 24.0, 25.0}) {
    const double r = 30 + 0.4 * h;
    const double pi = std::numbers::pi;
    // CRC tables: pi h / 3 (R^2 + R r + r^2) and pi r^2, times the inscribed polygon's share
    const double volume = polygon_share(n) * pi * h / 3 * (30 * 30 + 30 * r + r * r);
    const double area = polygon_share(n) * pi * r * r;
    CHECK_THAT(mm3(curve.volume_below(h * millimetre)), WithinRel(volume, 1e-11));
    CHECK_THAT(mm2(curve.free_surface(h * millimetre)), WithinRel(area, 1e-11));
  }
}

TEST_CASE("a ball filled part way holds the spherical cap", "[geometry]") {
  const LevelCurve curve = LevelCurve::of_solid(test::ball(35, 300, 360));
  // pi h^2 (3 R - h) / 3 with R = 35, h = 20: 35604.716741 (worked example). Sides and rings lose
  // (2 pi / 360)^2 / 6 and (pi / 300)^2 / 4 of the section, 8e-5 together; twice that near the rim.
  CHECK_THAT(mm3(curve.volume_below(20 * millimetre)), WithinRel(35604.716741, 2e-4));
  CHECK_THAT(mm(curve.depth_at(35604.716741 * cubic_millimetre)), WithinAbs(20, 2e-3));
  CHECK_THAT(mm(curve.height()), WithinRel(70.0, exactly));
}

TEST_CASE("a cylinder on its side fills as the circle's segment says", "[geometry]") {
  // L (R^2 acos((R-h)/R) - (R-h) sqrt(2Rh - h^2)): R = 40, L = 100, h = 30 gives 172168.738002;
  // a circle of 96 across filled to 22 has a segment of 1251.2018147 (worked examples).
  const auto [radius, length, depth, expected] = GENERATE(table<double, double, double, double>(
      {{40, 100, 30, 172168.738002}, {48, 1, 22, 1251.2018147383194}}));
  constexpr std::uint32_t n =
      1440;  // loses 3e-6 of the circle, some ten times that of a low segment
  const TriangleMesh lying = test::on_its_side(turned({{radius, 0}, {radius, length}}, n));
  const LevelCurve curve = LevelCurve::of_solid(lying);
  CHECK_THAT(mm3(curve.volume_below(depth * millimetre)), WithinRel(expected, 3e-5));
  CHECK_THAT(mm(curve.depth_at(expected * cubic_millimetre)), WithinAbs(depth, 1e-3));
}

TEST_CASE("an obelisk's parts follow the prismoidal rule", "[geometry]") {
  const LevelCurve curve = LevelCurve::of_solid(obelisk(80, 60, 60, 30, 40));
  // Simpson's rule is exact for a section quadratic in height: h / 6 (A0 + 4 Am + A1).
  const auto section = [](double h) { return (80 - h / 2) * (60 - 0.75 * h); };
  for (const double h : {4.0, 20.0, 33.0, 40.0}) {
    const double rule = h / 6 * (section(0) + 4 * section(h / 2) + section(h));
    CHECK_THAT(mm3(curve.volume_below(h * millimetre)), WithinRel(rule, exactly));
    CHECK_THAT(mm2(curve.free_surface(h * millimetre)), WithinRel(section(h), exactly));
  }
}

TEST_CASE("the lower half of a ring or an ellipsoid holds half", "[geometry]") {
  const auto solid =
      GENERATE(test::torus(30, 10, 64, 96), test::stretched(test::ball(1, 64, 90), {40, 25, 15}));
  const LevelCurve curve = LevelCurve::of_solid(solid);  // by symmetry
  CHECK_THAT(curve.volume_below(curve.height() / 2) / curve.brimful(), WithinRel(0.5, exactly));
  CHECK_THAT(curve.depth_at(curve.brimful() / 2) / curve.height(), WithinRel(0.5, exactly));
}

TEST_CASE("a cup standing on its point holds an eighth at half its depth", "[geometry]") {
  const LevelCurve cone = LevelCurve::of_solid(turned({{0, 0}, {30, 60}}, 24));
  for (const double share : {1e-12, 1e-6, 0.125, 0.5, 0.999}) {
    // Similar cones: volume grows with the cube of the depth.
    CHECK_THAT(cone.depth_at(share * cone.brimful()) / cone.height(),
               WithinRel(std::cbrt(share), 1e-9));
  }
  CHECK_THAT(mm2(cone.free_surface(Length())), WithinAbs(0, 1e-12));
}

TEST_CASE("a step in the wall is met exactly", "[geometry]") {
  // A wide tray over a narrow well: 10 x 10 x 5 below, 30 x 20 x 8 above.
  TriangleMesh stepped = turned({{10, 0}, {10, 5}, {30, 5}, {30, 13}}, 4);  // squares, area 2 r^2
  const LevelCurve curve = LevelCurve::of_solid(stepped);
  CHECK_THAT(mm3(curve.volume_below(5 * millimetre)), WithinRel(200.0 * 5, exactly));
  CHECK_THAT(mm3(curve.volume_below(9 * millimetre)), WithinRel(200.0 * 5 + 1800.0 * 4, exactly));
  CHECK_THAT(mm2(curve.free_surface(4.999 * millimetre)), WithinRel(200.0, exactly));
  CHECK_THAT(mm2(curve.free_surface(5.001 * millimetre)), WithinRel(1800.0, exactly));
  CHECK_THAT(mm2(curve.free_surface(Length())), WithinRel(200.0, exactly));         // the floor
  CHECK_THAT(mm2(curve.free_surface(curve.height())), WithinRel(1800.0, exactly));  // the opening
}

TEST_CASE("depths outside the cavity give its ends", "[geometry]") {
  const LevelCurve curve =
      GENERATE(LevelCurve::of_solid(test::box({0, 0, 50}, {10, 10, 60})),
               LevelCurve::of_bands({LevelCurve::quadratic_band(
                   Length(), 10 * millimetre, 100 * square_millimetre, Length(), 0)}));
  CHECK(mm3(curve.volume_below(-1 * millimetre)) == 0);
  CHECK_THAT(mm3(curve.volume_below(99 * millimetre)), WithinRel(1000.0, exactly));
  CHECK(curve.depth_at(-1 * millilitre) == Length());
  CHECK(curve.depth_at(99 * millilitre) == curve.height());
  CHECK_THAT(mm(curve.depth_at(0.3 * millilitre)), WithinRel(3.0, exactly));
}

TEST_CASE("bands in closed form hold what the handbook says", "[geometry]") {
  const double pi = std::numbers::pi;
  // The frustum above, its section pi (30 + 0.4 t)^2 written out, under a cylinder of radius 40.
  const auto frustum = LevelCurve::quadratic_band(
      Length(), 25 * millimetre, 900 * pi * square_millimetre, 24 * pi * millimetre, 0.16 * pi);
  const auto cylinder = LevelCurve::quadratic_band(25 * millimetre, 35 * millimetre,
                                                   1600 * pi * square_millimetre, Length(), 0);
  const LevelCurve curve = LevelCurve::of_bands({frustum, cylinder});
  CHECK_THAT(mm3(curve.volume_below(25 * millimetre)), WithinRel(96865.773486, 1e-11));
  CHECK_THAT(mm3(curve.brimful()), WithinRel(96865.773486 + 16000 * pi, 1e-11));
  CHECK_THAT(mm2(curve.free_surface(30 * millimetre)), WithinRel(1600 * pi, exactly));
  CHECK_THAT(mm(curve.depth_at(96865.773486 * cubic_millimetre)), WithinRel(25.0, 1e-11));
  CHECK_THAT(mm(curve.depth_at((96865.773486 + 1600 * pi) * cubic_millimetre)),
             WithinRel(26.0, 1e-11));
}

TEST_CASE("bands with a gap between them are our own mistake", "[geometry]") {
  const auto slice = [](double from, double to) {
    return LevelCurve::quadratic_band(from * millimetre, to * millimetre, 1 * square_millimetre,
                                      Length(), 0);
  };
  CHECK_THROWS_AS(LevelCurve::of_bands({}), std::logic_error);
  CHECK_THROWS_AS(LevelCurve::of_bands({slice(1, 2)}), std::logic_error);
  CHECK_THROWS_AS(LevelCurve::of_bands({slice(0, 2), slice(3, 4)}), std::logic_error);
  CHECK_THROWS_AS(LevelCurve::of_bands({slice(0, 0)}), std::logic_error);
}

TEST_CASE("the closed form and the mesh of a cup agree to the polygon's share", "[geometry]") {
  constexpr std::uint32_t n = 90;
  const double pi = std::numbers::pi;
  const LevelCurve closed = LevelCurve::of_bands({LevelCurve::quadratic_band(
      Length(), 25 * millimetre, 900 * pi * square_millimetre, 24 * pi * millimetre, 0.16 * pi)});
  const LevelCurve mesh =
      LevelCurve::of_solid(turned({{30, 0}, {40, 25}}, n)).holding(1 / polygon_share(n));
  for (int i = 0; i <= 20; ++i) {
    const Length depth = i / 20.0 * 25 * millimetre;
    CHECK_THAT(mm3(mesh.volume_below(depth)), WithinAbs(mm3(closed.volume_below(depth)), 1e-6));
    CHECK_THAT(mm2(mesh.free_surface(depth)), WithinAbs(mm2(closed.free_surface(depth)), 1e-8));
  }
}

}  // namespace
}  // namespace brimwright::geometry
