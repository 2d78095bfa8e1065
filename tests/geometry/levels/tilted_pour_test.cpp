#include "geometry/levels/tilted_pour.h"

#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <numbers>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

Tilt tilt(double degrees, double low_side_degrees = 0) {
  return {Angle::in_degrees(degrees), Angle::in_degrees(low_side_degrees)};
}

double tangent(double degrees) { return std::tan(degrees * pi / 180); }

double mm3(Volume volume) { return volume / cubic_millimetre; }

constexpr double length = 80, width = 60, height = 40;

TriangleMesh box() { return test::box({-40, -30, 0}, {40, 30, 40}); }

/// What is poured into an upright box tilted along its length, by the section of the liquid: a
/// triangle while the far end of the floor is dry, then a trapezium (geometry on paper).
double in_tilted_box(double mark, double degrees) {
  const double wet_floor = degrees == 0 ? length : std::min(length, mark / tangent(degrees));
  const double far_side = std::max(0.0, mark - length * tangent(degrees));
  return width * wet_floor * (mark + far_side) / 2;
}

TriangleMesh any_cup() {
  const auto sides = 4 * *rc::gen::inRange<std::uint32_t>(1, 12);
  std::vector<test::Turned> profile = {{*rc::gen::inRange(5, 30) * 1.0, 0}};
  double up = 0;
  for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
    up += *rc::gen::inRange(4, 15);
    profile.push_back({profile.back().radius + *rc::gen::inRange(0, 12), up});
  }
  return test::turned(profile, sides);
}

}  // namespace

TEST_CASE("a box tilted at one end fills as a wedge, then as a prism with a slanting top",
          "[geometry][tilt]") {
  const double degrees = GENERATE(0.0, 5.0, 20.0, 26.565051177078, 45.0, 70.0);
  const TiltedPour pour(box(), tilt(degrees));
  CHECK_THAT(pour.lowest_mark() / millimetre, WithinAbs(0, 1e-12));
  CHECK_THAT(pour.brim() / millimetre, WithinAbs(height, 1e-12));
  for (const double mark : {0.5, 10.0, 19.9, 33.0, 40.0}) {
    CAPTURE(degrees, mark);
    const double expected = in_tilted_box(mark, degrees);
    CHECK_THAT(mm3(pour.volume_at(mark * millimetre)), WithinRel(expected, 1e-11));
    CHECK_THAT(pour.mark_for(expected * cubic_millimetre) / millimetre, WithinRel(mark, 1e-9));
    CHECK(pour.pools_at(mark * millimetre) == 1);
  }
  CHECK_THAT(mm3(pour.most()), WithinRel(in_tilted_box(height, degrees), 1e-11));
}

TEST_CASE("the side that is low is the one that was said", "[geometry][tilt]") {
  // Low along y the box is 60 long and 80 wide: a wedge of 20 x 20 / tan 45 / 2 x 80 either way.
  for (const double side : {90.0, -90.0, 270.0}) {
    const TiltedPour pour(box(), tilt(45, side));
    CHECK_THAT(mm3(pour.volume_at(20 * millimetre)), WithinRel(20.0 * 20 / 2 * 80, 1e-11));
    const Box poured = bounding_box(pour.poured(20 * millimetre));
    CHECK_THAT(side == 90 ? poured.high_mm[1] : -poured.low_mm[1], WithinAbs(30, 1e-9));
    CHECK_THAT(side == 90 ? poured.low_mm[1] : -poured.high_mm[1], WithinAbs(10, 1e-9));
  }
  // Low at a corner: a pyramid of three mutually upright edges, 1/6 of their product. The plane
  // rises by tan 45 along the diagonal, so both floor edges are sqrt 2 times the mark.
  const TiltedPour corner(box(), tilt(45, 45));
  CHECK_THAT(mm3(corner.volume_at(12 * millimetre)),
             WithinRel(12.0 * 12 * std::sqrt(2) * 12 * std::sqrt(2) / 6, 1e-11));
}

TEST_CASE("a round cup tilted fills as a cylindrical wedge, then as a truncated cylinder",
          "[geometry][tilt]") {
  constexpr double r = 30;
  constexpr std::uint32_t sides = 1440;
  const TriangleMesh cup = test::turned({{r, 0}, {r, 50}}, sides);
  // An inscribed 1440-gon has 3e-6 less area than its circle; the thinnest wedge here, 10 mm long,
  // loses 7e-5 mm of length, r (1 - cos(pi / 1440)), and so up to thrice that share.
  constexpr double coarse = 2e-5;
  SECTION("the wedge up to half the floor, by the handbook's ungula") {
    // h / (3 b) [a (3 r^2 - a^2) + 3 r^2 (b - r) alpha]: h up the wall, b wet floor, a half the
    // chord, alpha half the angle of the wet floor's arc (Harris and Stocker, Handbook of
    // Mathematics and Computational Science, 1998, "cylindrical wedge"; page from memory: 104).
    const double b = GENERATE(10.0, 30.0, 45.0, 60.0);
    const double h = 20;
    const double degrees = std::atan2(h, b) * 180 / pi;
    const double a = std::sqrt(b * (2 * r - b));
    const double alpha = std::acos((r - b) / r);
    const double expected = h / (3 * b) * (a * (3 * r * r - a * a) + 3 * r * r * (b - r) * alpha);
    // Known without the handbook: Archimedes' hoof, and the half of a cylinder.
    if (b == 30) CHECK_THAT(expected, WithinRel(2.0 / 3 * r * r * h, 1e-12));
    if (b == 60) CHECK_THAT(expected, WithinRel(pi * r * r * h / 2, 1e-12));
    CHECK_THAT(mm3(TiltedPour(cup, tilt(degrees)).volume_at(h * millimetre)),
               WithinRel(expected, coarse));
  }
  SECTION("a truncated cylinder holds its middle height") {
    const double rise = 2 * r * tangent(15);
    CHECK_THAT(mm3(TiltedPour(cup, tilt(15)).volume_at(35 * millimetre)),
               WithinRel(pi * r * r * (35 - rise / 2), coarse));
  }
}

TEST_CASE("a half ball tilted gathers its pour part of the way up the wall", "[geometry][tilt]") {
  // The lower half of a ball of 25 mm, tilted 30 degrees: whatever the angle the liquid is a cap of
  // the ball, pi h^2 (3 r - h) / 3; the low brim is r sin 30 below the centre.
  constexpr double r = 25;
  std::vector<test::Turned> profile;
  for (int i = 0; i <= 180; ++i) {
    const double angle = pi / 2 * i / 180;
    profile.push_back({i == 0 ? 0 : r * std::sin(angle), r - r * std::cos(angle)});
  }
  const TiltedPour pour(test::turned(profile, 720), tilt(30));
  CHECK_THAT(pour.lowest_mark() / millimetre, WithinAbs(r - r * std::cos(pi / 6), 0.1));
  const double cap = r - r * std::sin(pi / 6);
  CHECK_THAT(mm3(pour.most()), WithinRel(pi * cap * cap * (3 * r - cap) / 3, 2e-4));
  const Place option{"command line", "--pour"};
  CHECK_THROWS_WITH(reachable(pour, 1 * millimetre, option),
                    Contains("command line: --pour: is 1 mm up the low wall") &&
                        Contains("give from 3.35 mm (0.132 in) to 25 mm (0.984 in)"));
  CHECK_THROWS_AS(reachable(pour, 26 * millimetre, option), UserError);
  CHECK(reachable(pour, 12 * millimetre, option) == 12 * millimetre);
}

TEST_CASE("two wells tilted are two pools, and one above the wall between them",
          "[geometry][tilt]") {
  // Two 20 mm wells of 10 mm depth, side by side with a 10 mm wall, under a common basin: turned on
  // its side, a prism whose section is the outline below, drawn in x and z.
  const std::vector<std::array<double, 2>> outline = {{-25, 0}, {-5, 0}, {-5, 10}, {5, 10},
                                                      {5, 0},   {25, 0}, {25, 30}, {-25, 30}};
  PlaneCut drawn;
  std::vector<std::uint32_t> around;
  for (const auto& [x, z] : outline) {
    around.push_back(static_cast<std::uint32_t>(drawn.vertices_mm.size()));
    drawn.vertices_mm.push_back({x, 0, z});
  }
  TriangleMesh wells{.vertices_mm = drawn.vertices_mm, .triangles = {}};
  const auto n = static_cast<std::uint32_t>(outline.size());
  for (const auto& [x, z] : outline) wells.vertices_mm.push_back({x, 20, z});
  for (std::uint32_t i = 0; i < n; ++i) {
    const std::uint32_t next = (i + 1) % n;
    wells.triangles.push_back({i, n + next, next});
    wells.triangles.push_back({i, n + i, n + next});
  }
  for (const auto& [a, b, c] : std::vector<std::array<std::uint32_t, 3>>{
           {0, 1, 2}, {0, 2, 7}, {2, 3, 7}, {3, 6, 7}, {3, 4, 5}, {3, 5, 6}}) {
    wells.triangles.push_back({a, b, c});
    wells.triangles.push_back({n + a, n + c, n + b});
  }
  wells = checked_solid(wells, "wells").solid;
  const TiltedPour pour(wells, tilt(10));
  CHECK(pour.pools_at(3 * millimetre) == 1);  // the high well's floor lies 30 tan 10 = 5.3 higher
  // The wall's far edge lies at 10 + 30 tan 10 = 15.3 up the low wall.
  CHECK(pour.pools_at(15 * millimetre) == 2);
  CHECK(pour.pools_at(16 * millimetre) == 1);
}

TEST_CASE("the pour over a set layer is what is left of the cavity below its line",
          "[geometry][tilt]") {
  // A wedge of 25 mm up the low end of the box, then a level pour to 30 mm and to 10 mm. At 10 mm
  // the wedge still stands out by the similar wedge of 15 mm.
  const double degrees = 30;
  const TiltedPour first(box(), tilt(degrees));
  const PourOverLayer second(box(), first, 25 * millimetre);
  const double wedge = in_tilted_box(25, degrees), standing_out = in_tilted_box(15, degrees);
  CHECK_THAT(mm3(second.set_layer()), WithinRel(wedge, 1e-11));
  CHECK_THAT(second.covered_at() / millimetre, WithinRel(25.0, 1e-12));
  CHECK_THAT(mm3(second.volume_below(30 * millimetre)),
             WithinRel(length * width * 30 - wedge, 1e-11));
  CHECK_THAT(mm3(second.volume_below(10 * millimetre)),
             WithinRel(length * width * 10 - (wedge - standing_out), 1e-11));
  CHECK_THAT(second.depth_at(second.volume_below(10 * millimetre)) / millimetre,
             WithinRel(10.0, 1e-10));
}

TEST_CASE("what was poured and what was left free make up the cavity", "[geometry][tilt][law]") {
  rc::prop("first pour + second pour = the cavity below the line", [] {
    const TriangleMesh cup = any_cup();
    const LevelCurve level = LevelCurve::of_solid(cup);
    const Tilt tilted = tilt(*rc::gen::inRange(0, 80), *rc::gen::inRange(0, 360));
    const TiltedPour first(cup, tilted);
    const Length mark = *rc::gen::inRange(1, 101) / 100.0 * first.brim();
    const PourOverLayer second(cup, first, mark);
    const Length line = *rc::gen::inRange(1, 101) / 100.0 * level.height();
    const TriangleMesh layer = first.poured(mark);
    const double all = mm3(level.brimful());
    double layer_below = 0;
    if (!layer.triangles.empty()) {
      const Length rises = bounding_box(layer).low_mm[2] * millimetre;
      layer_below = mm3(LevelCurve::of_solid(layer).volume_below(line - rises));
    }
    const double both = mm3(second.volume_below(line)) + layer_below;
    RC_ASSERT(std::abs(both - mm3(level.volume_below(line))) <= 1e-11 * all);
    RC_ASSERT(std::abs(mm3(second.set_layer() + second.volume_below(level.height())) - all) <=
              1e-11 * all);
  });
}

TEST_CASE("pouring more into a tilted mould never stands lower", "[geometry][tilt][law]") {
  rc::prop("mark and volume rise together and answer each other", [] {
    const TiltedPour pour(any_cup(), tilt(*rc::gen::inRange(0, 60), *rc::gen::inRange(0, 360)));
    const double share = *rc::gen::inRange(0, 1000) / 1000.0;
    const double more = share + *rc::gen::inRange(0, 1001) / 1000.0 * (1 - share);
    const Length mark = pour.mark_for(share * pour.most());
    RC_ASSERT(mark <= pour.mark_for(more * pour.most()));
    RC_ASSERT(mark >= pour.lowest_mark());
    RC_ASSERT(mark <= pour.brim());
    // These cups widen upward, so that no mark has more than one pour.
    RC_ASSERT(abs(pour.volume_at(mark) - share * pour.most()) <= 1e-6 * cubic_millimetre);
  });
}

TEST_CASE("under a level overhang the liquid rises while its mark stays", "[geometry][tilt]") {
  // A bottle: 30 mm square up to 20 mm, its neck 10 mm square from there to 40 mm. Tilted 45
  // degrees the liquid's surface rises from the low wall at a right angle's half: z = mark - (15 -
  // x).
  TriangleMesh bottle = test::turned({{15, 0}, {15, 20}, {5, 20}, {5, 40}}, 4);
  bottle = test::turned_about_z(test::stretched(bottle, {std::sqrt(2), std::sqrt(2), 1}), pi / 4);
  const TiltedPour pour(bottle, tilt(45));
  CHECK_THAT(pour.brim() / millimetre, WithinAbs(40, 1e-9));
  // Up to the overhang: a triangle of 20 mm, 30 mm wide.
  const double to_overhang = 20.0 * 20 / 2 * 30;
  CHECK_THAT(mm3(pour.volume_at(20 * millimetre)), WithinRel(to_overhang, 1e-11));
  // A surface 5 mm higher meets the overhang 5 mm in from the low wall: the triangle of 25 mm less
  // its tip of 5 mm above the overhang.
  const Volume more = (25.0 * 25 / 2 - 5.0 * 5 / 2) * 30 * cubic_millimetre;
  CHECK_THAT(pour.mark_for(more) / millimetre, WithinAbs(20, 1e-9));
  CHECK_THAT(mm3(PourOverLayer(bottle, pour, more).set_layer()), WithinRel(mm3(more), 1e-11));
  CHECK(pour.pools_with(more) == 1);
  CHECK_THAT(mm3(enclosed_volume(pour.left_free(more)) + more),
             WithinRel(30.0 * 30 * 20 + 10.0 * 10 * 20, 1e-11));
}

TEST_CASE("propping a mould level is pouring it level", "[geometry][tilt]") {
  const TriangleMesh cup = test::turned({{10, 0}, {22, 9}, {30, 21}}, 24);
  const LevelCurve level = LevelCurve::of_solid(cup);
  const TiltedPour pour(cup, tilt(0, 77));
  for (const double mark : {3.0, 9.0, 15.0, 21.0})
    CHECK_THAT(mm3(pour.volume_at(mark * millimetre)),
               WithinRel(mm3(level.volume_below(mark * millimetre)), 1e-12));
}

TEST_CASE("a flat dish tilted steeper than its wall holds nothing, and that is said",
          "[geometry][tilt]") {
  // A cone of 45 degrees, tilted 50: its wall runs down to the brim.
  const TiltedPour pour(test::turned({{0, 0}, {30, 30}}, 64), tilt(50));
  CHECK(pour.most() == Volume());
  CHECK(pour.poured(10 * millimetre).triangles.empty());
  CHECK_THROWS_WITH(reachable(pour, 10 * millimetre, {"command line", "--mark"}),
                    Contains("holds nothing") && Contains("tilt the mould less"));
}

TEST_CASE("a mould cannot be tiltedright or over", "[geometry][tilt]") {
  const Place option{"command line", "--tilt"};
  CHECK_THROWS_WITH(check(tilt(90), option), Contains("--tilt") && Contains("below 90"));
  CHECK_THROWS_AS(check(tilt(-1), option), UserError);
  CHECK_THROWS_AS(check(tilt(std::nan("")), option), UserError);
  CHECK_NOTHROW(check(tilt(89.9, 400), option));
  CHECK_THROWS_AS(TiltedPour(box(), tilt(120)), std::logic_error);
}

}  // namespace brimwright::geometry
