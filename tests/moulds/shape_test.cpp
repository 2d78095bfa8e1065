// Closed forms against the solid-geometry handbook: D. Zwillinger, CRC Standard Mathematical Tables
// and Formulae ("CRC" below). Numbers without a formula beside them were computed from the
// handbook's formula and checked by numeric integration outside this program.

#include "moulds/shape.h"

#include "moulds/shape_curve.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace brimwright::moulds {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

constexpr Length mm = millimetre;
constexpr double rounding = 1e-12;  // a dozen operations in double precision

double brimful_mm3(const Shape& shape) { return level_curve(shape).brimful() / cubic_millimetre; }
double mm3_to(const Shape& shape, double depth_mm) {
  return level_curve(shape).volume_below(depth_mm * mm) / cubic_millimetre;
}
double mm2_at(const Shape& shape, double depth_mm) {
  return level_curve(shape).free_surface(depth_mm * mm) / square_millimetre;
}

}  // namespace

TEST_CASE("a round cup holds pi h / 3 (R2 + R r + r2)", "[moulds]") {
  const Frustum cup{.floor_diameter = 60 * mm, .brim_diameter = 80 * mm, .height = 25 * mm};
  CHECK_THAT(brimful_mm3(cup), WithinRel(96865.773486, 1e-11));  // CRC, frustum of a cone
  // Half-way up its radius is 35: a frustum of radii 30 and 35, height 12.5.
  CHECK_THAT(mm3_to(cup, 12.5), WithinRel(pi * 12.5 / 3 * (30 * 30 + 30 * 35 + 35 * 35), rounding));
  CHECK_THAT(mm2_at(cup, 12.5), WithinRel(pi * 35 * 35, rounding));
}

TEST_CASE("a block with draft is the handbook's obelisk", "[moulds]") {
  // CRC: h/6 (a b + (a + a1)(b + b1) + a1 b1), ends 80 x 60 and 70 x 50, height 40: each wall leans
  // inward by 5 mm over 40.
  const Block block{.length = 80 * mm,
                    .width = 60 * mm,
                    .height = 40 * mm,
                    .draft = Angle::in_radians(std::atan(5.0 / 40)),
                    .corner_radius = {}};
  CHECK_THAT(brimful_mm3(block), WithinRel(40.0 / 6 * (80 * 60 + 150 * 110 + 70 * 50), rounding));
  CHECK_THAT(mm2_at(block, 0), WithinRel(70.0 * 50, rounding));
}

TEST_CASE("a square pyramid's frustum holds h / 3 (A + B + sqrt(A B))", "[moulds]") {
  // CRC: ends 60 and 40 mm square, height 30: 76000 mm3.
  const double lean = std::atan(10.0 / 30);
  const Block block{.length = 60 * mm,
                    .width = 60 * mm,
                    .height = 30 * mm,
                    .draft = Angle::in_radians(lean),
                    .corner_radius = {}};
  const RegularPolygon four{
      .sides = 4, .across_flats = 60 * mm, .height = 30 * mm, .draft = Angle::in_radians(lean)};
  const FreeOutline square{
      .points = {{0 * mm, 0 * mm}, {60 * mm, 0 * mm}, {60 * mm, 60 * mm}, {0 * mm, 60 * mm}},
      .height = 30 * mm,
      .draft = Angle::in_radians(lean)};
  CHECK_THAT(brimful_mm3(block), WithinRel(76000.0, rounding));
  CHECK_THAT(brimful_mm3(four), WithinRel(76000.0, rounding));
  CHECK_THAT(brimful_mm3(square), WithinRel(76000.0, rounding));
}

TEST_CASE("rounded corners take (4 - pi) r2 from every level of an upright block", "[moulds]") {
  // CRC: four corners of a square of side r less the quarter disc in each.
  const Block block{
      .length = 82 * mm, .width = 56 * mm, .height = 26 * mm, .draft = {}, .corner_radius = 6 * mm};
  CHECK_THAT(mm2_at(block, 10), WithinRel(82.0 * 56 - (4 - pi) * 36, rounding));
  CHECK_THAT(brimful_mm3(block), WithinRel(26 * (82.0 * 56 - (4 - pi) * 36), rounding));
}

TEST_CASE("a corner radius shrinks down a leaning wall until the corner is sharp", "[moulds]") {
  // Geometry on paper: the wall leans 8 mm over 40, the radius of 6 runs out where it has moved by
  // 6, 30 mm below the brim, that is 10 mm above the floor.
  const Block block{.length = 90 * mm,
                    .width = 60 * mm,
                    .height = 40 * mm,
                    .draft = Angle::in_radians(std::atan(0.2)),
                    .corner_radius = 6 * mm};
  CHECK_THAT(mm2_at(block, 0), WithinRel(74.0 * 44, rounding));
  CHECK_THAT(mm2_at(block, 10), WithinRel(78.0 * 48, rounding));
  CHECK_THAT(mm2_at(block, 25), WithinRel(84.0 * 54 - (4 - pi) * 9, rounding));
  CHECK_THAT(mm2_at(block, 40), WithinRel(90.0 * 60 - (4 - pi) * 36, rounding));
  // The obelisk less four corner horns; the horns' section is (4 - pi)(h - 10)^2 / 25.
  const double obelisk = 40.0 / 6 * (90 * 60 + 164 * 104 + 74 * 44);
  CHECK_THAT(brimful_mm3(block), WithinRel(obelisk - (4 - pi) * 27000 / 75, rounding));
}

TEST_CASE("flutes add half the square of their wave to a cup", "[moulds]") {
  // Polar area, half the integral of r^2: CRC gives the mean of cos^2 as 1/2, so pi R2 (1 + a2 /
  // 2).
  const FlutedCup cup{.floor_diameter = 36 * mm,
                      .brim_diameter = 52 * mm,
                      .height = 28 * mm,
                      .flutes = 12,
                      .flute_depth = 0.06 * 52 * mm};
  const double plain = pi * 28 / 3 * (18 * 18 + 18 * 26 + 26 * 26);
  CHECK_THAT(brimful_mm3(cup), WithinRel(plain * 1.0018, rounding));
  // 43028.0863 mm3 is the exact volume of a mesh of this cup made elsewhere with 72 facets a round;
  // sampling a wave of 12 in 72 points and cutting chords loses (R2 (2 pi / 72)2 / 6)(1 + ...) <
  // 0.4 %.
  CHECK(brimful_mm3(cup) > 43028.0863);
  CHECK_THAT(brimful_mm3(cup), WithinRel(43028.0863, 0.004));
}

TEST_CASE("a regular bar's level is n p2 tan(pi / n)", "[moulds]") {
  // CRC, hexagon: 2 sqrt(3) p2 with the inscribed circle's radius p.
  const RegularPolygon six{.sides = 6, .across_flats = 68 * mm, .height = 27 * mm, .draft = {}};
  CHECK_THAT(mm2_at(six, 13), WithinRel(2 * std::sqrt(3.0) * 34 * 34, rounding));
  CHECK_THAT(brimful_mm3(six), WithinRel(27 * 2 * std::sqrt(3.0) * 34 * 34, rounding));
}

TEST_CASE("an L-shaped wall leans in at its outer corners and keeps its inner one sharp",
          "[moulds]") {
  // Geometry on paper: an L of 60 x 50 with arms 20 wide; moved in by 4 each arm is 12 wide, the L
  // is 52 x 42: 52 * 12 + (42 - 12) * 12.
  const FreeOutline shape{.points = {{0 * mm, 0 * mm},
                                     {60 * mm, 0 * mm},
                                     {60 * mm, 20 * mm},
                                     {20 * mm, 20 * mm},
                                     {20 * mm, 50 * mm},
                                     {0 * mm, 50 * mm}},
                          .height = 20 * mm,
                          .draft = Angle::in_radians(std::atan(4.0 / 20))};
  CHECK_THAT(mm2_at(shape, 20), WithinRel(60.0 * 20 + 30 * 20, rounding));
  CHECK_THAT(mm2_at(shape, 0), WithinRel(52.0 * 12 + 30 * 12, rounding));
  // Prismoidal rule (CRC), exact for quadratic sections: middle moved in by 2, 56 x 46, arms 16.
  const double middle = 56.0 * 16 + 30 * 16;
  CHECK_THAT(brimful_mm3(shape),
             WithinRel(20.0 / 6 * (60 * 20 + 30 * 20 + 4 * middle + 52 * 12 + 30 * 12), rounding));
}

TEST_CASE("a turned profile is a stack of cone frustums", "[moulds]") {
  const TurnedProfile profile{.points = {{0 * mm, 7 * mm},
                                         {20 * mm, 7 * mm},
                                         {30 * mm, 17 * mm},
                                         {35 * mm, 17 * mm},
                                         {40 * mm, 42 * mm}}};
  const double low = pi * 10 / 3 * (400 + 600 + 900);
  const double high = pi * 25 / 3 * (35 * 35 + 35 * 40 + 40 * 40);  // CRC, frustum of a cone
  CHECK_THAT(mm3_to(profile, 10), WithinRel(low, rounding));
  CHECK_THAT(brimful_mm3(profile), WithinRel(low + high, rounding));
  CHECK_THAT(level_curve(profile).height() / mm, WithinRel(35.0, rounding));
}

TEST_CASE("a bowl holds two thirds of pi a b c", "[moulds]") {
  const Dome dome{.diameter = 80 * mm, .height = 33 * mm};
  CHECK_THAT(brimful_mm3(dome),
             WithinRel(2.0 / 3 * pi * 40 * 40 * 33, rounding));  // CRC, ellipsoid
}

TEST_CASE("a ball filled part way is a spherical cap", "[moulds]") {
  const Ball ball{.diameter = 70 * mm};
  CHECK_THAT(mm3_to(ball, 20), WithinRel(35604.716741, 1e-11));  // CRC, spherical cap
  CHECK_THAT(brimful_mm3(ball), WithinRel(4.0 / 3 * pi * 35 * 35 * 35, rounding));
  CHECK_THAT(mm2_at(ball, 20), WithinRel(pi * (2 * 35 * 20 - 20 * 20), rounding));
  CHECK(mm2_at(ball, 70) == 0);
  // A sphere of diameter 1 filled to 0.7: worked value of the fluids library (C. Bell,
  // geometry.py).
  CHECK_THAT(mm3_to(Ball{.diameter = 1 * mm}, 0.7), WithinRel(0.4105014400690663, 1e-12));
  const HalfBall half{.diameter = 70 * mm};
  CHECK_THAT(brimful_mm3(half), WithinRel(2.0 / 3 * pi * 35 * 35 * 35, rounding));
  CHECK_THAT(mm3_to(half, 20), WithinRel(35604.716741, 1e-11));
}

TEST_CASE("half a ring holds half of what Pappus gives the whole", "[moulds]") {
  // Pappus: path 2 pi 30 times section pi 10^2 = 59217.626407 mm3, read by halves.
  const HalfTorus ring{.centre_diameter = 60 * mm, .tube_diameter = 20 * mm};
  CHECK_THAT(brimful_mm3(ring), WithinRel(59217.626407 / 2, 1e-11));
  // At the opening: the flat ring between radii 20 and 40.
  CHECK_THAT(mm2_at(ring, 10), WithinRel(pi * (40 * 40 - 20 * 20), rounding));
}

TEST_CASE("part of a half ring is Pappus with a circular segment", "[moulds]") {
  // A circle of diameter 96 filled to 22 has 1251.2018147383194 below (MathWorld, Circular Segment,
  // as worked in the fluids library). The segment's middle lies over the ring's centre line, so the
  // path is 2 pi R at every level.
  const HalfTorus ring{.centre_diameter = 200 * mm, .tube_diameter = 96 * mm};
  CHECK_THAT(mm3_to(ring, 22), WithinRel(2 * pi * 100 * 1251.2018147383194, 1e-12));
}

TEST_CASE("a film on the bottom of a half ring is measured to the last digits", "[moulds]") {
  // The segment's leading term (4/3) sqrt(2 r) h^(3/2), next term -(3/10) h / (2 r) of it: at h / r
  // of 1e-9 the leading term alone is good to 2e-10.
  const HalfTorus ring{.centre_diameter = 200 * mm, .tube_diameter = 100 * mm};
  const double h = 50e-9;
  CHECK_THAT(mm3_to(ring, h),
             WithinRel(2 * pi * 100 * 4 / 3 * std::sqrt(100.0) * std::pow(h, 1.5), 1e-9));
}

TEST_CASE("a ring round a post holds the cup less the post", "[moulds]") {
  const TurnedRing ring{.outer_floor_diameter = 60 * mm,
                        .outer_brim_diameter = 80 * mm,
                        .post_floor_diameter = 24 * mm,
                        .post_brim_diameter = 20 * mm,
                        .height = 25 * mm};
  const double post = pi * 25 / 3 * (144 + 120 + 100);  // CRC, frustum of a cone
  CHECK_THAT(brimful_mm3(ring), WithinRel(96865.773486 - post, 1e-11));
}

TEST_CASE("an upright heart is a square and a whole disc", "[moulds]") {
  const Heart heart{.side = 42 * mm, .height = 22 * mm, .draft = {}};
  CHECK_THAT(brimful_mm3(heart), WithinRel(22 * (42.0 * 42 + pi * 21 * 21), rounding));
}

TEST_CASE("a leaning heart is what keeps its distance from the outline", "[moulds]") {
  // Counted on a grid of 0.05 mm: points of the heart at least 4 mm from everything outside it. The
  // outline's length of some 160 mm makes the count good to about 160 * 0.05 / sqrt(12) / 10 mm2.
  const double s = 42, d = 4, step = 0.05;
  const auto room = [&](double x, double y) {  // distance to the outline, for points inside
    const double cleft = std::hypot(x - s, y - s);
    if (x > s) return std::min(cleft, s / 2 - std::hypot(x - s, y - s / 2));
    if (y > s) return std::min(cleft, s / 2 - std::hypot(x - s / 2, y - s));
    return std::min({x, y, cleft});
  };
  double count = 0;
  for (double x = step / 2; x < 1.5 * s; x += step)
    for (double y = step / 2; y < 1.5 * s; y += step)
      if (!(x > s && y > s) && room(x, y) >= d) ++count;
  const Heart heart{
      .side = s * mm, .height = 20 * mm, .draft = Angle::in_radians(std::atan(d / 20))};
  CHECK_THAT(mm2_at(heart, 0), WithinAbs(count * step * step, 0.5));
}

TEST_CASE("a shape tells its kind and measures in a few words", "[moulds]") {
  CHECK(described(FlutedCup{.floor_diameter = 48 * mm,
                            .brim_diameter = 70 * mm,
                            .height = 38 * mm,
                            .flutes = 12,
                            .flute_depth = 3 * mm}) ==
        "fluted cup 48 to 70 mm, 38 mm high, 12 flutes 3 mm deep");
  CHECK(described(Block{.length = 82 * mm,
                        .width = 56.5 * mm,
                        .height = 26 * mm,
                        .draft = Angle::in_degrees(2),
                        .corner_radius = 6 * mm}) ==
        "block 82 x 56.5 mm, 26 mm high, draft 2\u00b0, corner radius 6 mm");
  CHECK(described(HalfTorus{.centre_diameter = 60 * mm, .tube_diameter = 20 * mm}) ==
        "half ring 80 mm across, tube 20 mm");
}

}  // namespace brimwright::moulds
