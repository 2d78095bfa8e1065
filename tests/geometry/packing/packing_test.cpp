#include "geometry/packing/packing.h"

#include "geometry/packing/packing_energy.h"
#include "geometry/surface/enclosed_volume.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;

constexpr double pi = std::numbers::pi;
constexpr std::uint32_t rod_sides = 48, tin_sides = 192;
constexpr double rod_radius = 10, rod_length = 60;

// An n-sided rod lies within its circle and holds one of cos(pi / n) times the radius. So what
// circles can do rods can, and what circles of the smaller radius cannot rods cannot.
const double rod_inner_radius = rod_radius * std::cos(pi / rod_sides);

TriangleMesh tin(double radius, double height, std::uint32_t sides) {
  return test::turned({{radius, 0}, {radius, height}}, sides);
}
const TriangleMesh& rod() {
  static const TriangleMesh mesh = tin(rod_radius, rod_length, rod_sides);
  return mesh;
}
/// Holds a circle of `radius`, as near as its sides come to it.
TriangleMesh round_hollow(double radius) {
  return tin(radius / std::cos(pi / tin_sides), rod_length + 4, tin_sides);
}

PackingTask standing(TriangleMesh hollow, Length cover = {}, Length apart = {}) {
  return {.hollow = std::move(hollow),
          .body = rod(),
          .cover = cover,
          .apart = apart,
          .lying = Lying::level};
}

struct Best {
  std::size_t circles;
  double size;  // of the hollow, in radii of the circles
};

}  // namespace

// Least radius of a circle round so many circles of radius 1, proved the least: R. L. Graham 1968
// (up to 7), U. Pirl, Math. Nachr. 40 (1969) 111-124 (up to 10), H. Melissen, Geom. Dedicata 50
// (1994) 15-25 (11), F. Fodor 2000 (12) and 2003 (13). Closed forms as in the table of Graham,
// Lubachevsky, Nurmela and Ostergard, Discrete Math. 181 (1998) 139-154, read as quoted by others.
const std::vector<Best> in_circle = {
    {1, 1},
    {2, 2},
    {3, 1 + 2 / std::sqrt(3)},
    {4, 1 + std::sqrt(2)},
    {5, 1 + std::sqrt(2 * (1 + 1 / std::sqrt(5)))},
    {7, 3},
    {8, 1 + 1 / std::sin(pi / 7)},
    {9, 1 + std::sqrt(2 * (2 + std::sqrt(2)))},
    {10, 3.81302563},  // 1 + 2 / d with d of OEIS A281115
    {11, 1 + 1 / std::sin(pi / 9)},
    {12, 4.02960193},  // from memory; the sources above print 4.029
    {13, 2 + std::sqrt(5)},
};

TEST_CASE("as many rods stand in a round tin as circles are known to fit in a circle",
          "[geometry][packing]") {
  const auto row = GENERATE(range(std::size_t{0}, std::size_t{11}));
  const Best best = in_circle[row], next = in_circle[row + 1];
  const double radius = 1.015 * best.size * rod_radius;  // 1.5 % to spare
  CAPTURE(best.circles, radius);
  REQUIRE(radius / std::cos(pi / tin_sides) < next.size * rod_inner_radius);  // no room for more
  CHECK(packed(standing(round_hollow(radius))).places.size() == best.circles);
}

// Least side of a square round so many circles of radius 1, proved the least: J. Schaer and A. Meir
// 1965 (8), J. Schaer 1965 (9), others before; P. G. Szabo et al., New Approaches to Circle Packing
// in a Square, Springer 2007, table 1.2 for who proved which.
const std::vector<Best> in_square = {
    {1, 2},
    {2, 2 + std::sqrt(2)},
    {3, 2 + (std::sqrt(2) + std::sqrt(6)) / 2},
    {4, 4},
    {5, 2 + 2 * std::sqrt(2)},
    {6, 2 + 12 / std::sqrt(13)},
    {7, 4 + std::sqrt(3)},
    {8, 2 + std::sqrt(2) + std::sqrt(6)},
    {9, 6},
    {10, 6.747},
};

TEST_CASE("as many rods stand in a square box as circles are known to fit in a square",
          "[geometry][packing]") {
  const auto row = GENERATE(as<std::size_t>(), 1, 4, 5, 7, 8);
  const Best best = in_square[row], next = in_square[row + 1];
  const double side = 1.012 * best.size * rod_radius;
  CAPTURE(best.circles, side);
  REQUIRE(side < next.size * rod_inner_radius);
  const TriangleMesh hollow = test::box({0, 0, 0}, {side, side, rod_length + 1});
  CHECK(packed(standing(hollow)).places.size() == best.circles);
}

TEST_CASE("rods that leave no room on paper but what they need are found", "[geometry][packing]") {
  // 3 x 2 of 20 mm, with 5 mm cover and 5 mm between: 80 mm by 55 mm, to the last.
  const TriangleMesh rods = test::box({-10, -10, 0}, {10, 10, 240});
  const TriangleMesh loaf = test::box({0, 0, 0}, {80, 55, 250});
  const Packing found = packed({.hollow = loaf,
                                .body = rods,
                                .cover = 5 * millimetre,
                                .apart = 5 * millimetre,
                                .lying = Lying::level});
  REQUIRE(found.places.size() == 6);
  CHECK_THAT(found.least_cover / millimetre, WithinAbs(5, 1e-5));  // a hair of 270 mm is 3e-6
  CHECK_THAT(found.least_apart / millimetre, WithinAbs(5, 1e-5));
}

TEST_CASE("cubes fill a box as counting says", "[geometry][packing]") {
  const auto [x, y, z, lying] = GENERATE(table<int, int, int, Lying>({{2, 2, 2, Lying::free},
                                                                      {2, 2, 2, Lying::layered},
                                                                      {3, 2, 1, Lying::level},
                                                                      {3, 2, 2, Lying::layered},
                                                                      {1, 1, 4, Lying::free}}));
  constexpr double spare = 1e-5;  // millionths of the cubes' sides
  const TriangleMesh cube = test::box({0, 0, 0}, {10, 10, 10});
  const TriangleMesh hollow =
      test::box({0, 0, 0}, {10 * x + spare, 10 * y + spare, 10 * z + spare});
  const Packing found = packed({.hollow = hollow, .body = cube, .lying = lying});
  CHECK(found.places.size() == static_cast<std::size_t>(x * y * z));
}

TEST_CASE("no more balls are found in a box than the densest packing of space allows",
          "[geometry][packing]") {
  // pi / sqrt(18): T. C. Hales, Annals of Mathematics 162 (2005) 1065-1185 (from memory). Boxes
  // tile space, so what fills one is a packing of space. Counted with the balls that the facetted
  // balls hold.
  const double side = GENERATE(20.5, 34.2, 41.0, 49.0);
  constexpr std::uint32_t rings = 16, sides = 32;
  constexpr double radius = 10;
  const TriangleMesh hollow = test::box({0, 0, 0}, {side, side, side});
  const Packing found = packed({.hollow = hollow, .body = test::ball(radius, rings, sides)});
  const double inner = radius * std::cos(pi / (2 * rings)) * std::cos(pi / sides);
  const double held = 4.0 / 3 * pi * std::pow(inner, 3) * static_cast<double>(found.places.size());
  CAPTURE(side, found.places.size());
  CHECK(held <= pi / std::sqrt(18.0) * std::pow(side, 3));
  // What is plain to see: one, two on the diagonal (side 2 + 2 / sqrt 3 = 3.155 radii), eight, and
  // nine with one in the middle of eight (2 + 4 / sqrt 3 = 4.309).
  const std::size_t at_least = side < 31.6 ? 1 : side < 40 ? 2 : side < 43.1 ? 8 : 9;
  CHECK(found.places.size() >= at_least);
}

TEST_CASE("rods along a loaf never fill more of it than circles can of the plane",
          "[geometry][packing]") {
  // pi / sqrt(12): A. Thue 1910, L. Fejes Toth 1943 (from memory). Five and four and five rods of
  // radius 10 in staggered rows stand 20 (1 + sqrt 3) high and 100 wide.
  const double width = 100.5, height = 20 * (1 + std::sqrt(3)) + 0.5;
  const TriangleMesh loaf = test::box({0, 0, 0}, {rod_length + 1, width, height});
  const TriangleMesh lying = test::on_its_side(rod());
  const Packing found = packed({.hollow = loaf, .body = lying, .lying = Lying::layered});
  const double held = pi * std::pow(rod_inner_radius, 2) * static_cast<double>(found.places.size());
  CAPTURE(found.places.size());
  CHECK(held <= pi / std::sqrt(12.0) * width * height);
  CHECK(found.places.size() >= 14);
}

TEST_CASE("the same task has the same answer", "[geometry][packing]") {
  const PackingTask task = standing(round_hollow(28), 1 * millimetre, 1 * millimetre);
  const Packing once = packed(task), again = packed(task);
  REQUIRE(once.places.size() == again.places.size());
  for (std::size_t i = 0; i < once.places.size(); ++i) {
    CHECK(once.places[i].turn == again.places[i].turn);
    CHECK(once.places[i].move_mm == again.places[i].move_mm);
  }
}

TEST_CASE("no more are looked for than wanted, and progress only grows", "[geometry][packing]") {
  PackingTask task = standing(round_hollow(37));
  task.most = 3;
  std::vector<double> told;
  CHECK(packed(task, [&](double share) { told.push_back(share); }).places.size() == 3);
  CHECK(std::is_sorted(told.begin(), told.end()));
  CHECK(told.front() == 0);
  CHECK(told.back() == 1);
}

TEST_CASE("a body is turned to fit where it may be", "[geometry][packing]") {
  const TriangleMesh hollow = test::box({0, 0, 0}, {30, 60, 20});
  const TriangleMesh stick = test::box({0, 0, 0}, {50, 10, 10});  // made across the hollow
  const TriangleMesh post = test::box({0, 0, 0}, {10, 10, 50});   // made to stand
  CHECK(packed({.hollow = hollow, .body = stick, .lying = Lying::level}).places.size() == 2);
  CHECK(packed({.hollow = hollow, .body = post, .lying = Lying::level}).places.empty());
  CHECK(packed({.hollow = hollow, .body = post, .lying = Lying::layered}).places.empty());
  CHECK(packed({.hollow = hollow, .body = post, .lying = Lying::free}).places.size() >= 2);
}

TEST_CASE("a stick longer than a box's sides is laid along its diagonal", "[geometry][packing]") {
  // A stick 4 x 4 across lies in a square of 60 mm along the diagonal if it is no longer than
  // 60 sqrt(2) - 4 = 80.85.
  const TriangleMesh hollow = test::box({0, 0, 0}, {60, 60, 6});
  const TriangleMesh stick = test::box({0, 0, 0}, {80, 4, 4});
  const TriangleMesh too_long = test::box({0, 0, 0}, {81.5, 4, 4});
  CHECK(packed({.hollow = hollow, .body = stick, .lying = Lying::level}).places.size() >= 1);
  CHECK(packed({.hollow = hollow, .body = too_long, .lying = Lying::level}).places.empty());
}

TEST_CASE("how large a body could be is known where geometry says", "[geometry][packing]") {
  const TriangleMesh hollow = test::box({0, 0, 0}, {100, 60, 40});
  const Length cover = 5 * millimetre;
  struct Row {
    TriangleMesh body;
    double scale;
  };
  const auto [body, scale] = GENERATE(values<Row>({
      {test::ball(10, 24, 48), (40 - 10) / 2.0 / 10},  // half of the lowest side less cover
      {test::ball(30, 24, 48), (40 - 10) / 2.0 / 30},  // does not fit as it is
      {test::box({0, 0, 0}, {45, 25, 15}), 2},         // 90, 50 and 30 are left
      {test::box({0, 0, 0}, {25, 45, 15}), 2},         // likewise, turned
      {test::box({0, 0, 0}, {18, 10, 300}), 0.1},      // stays upright
  }));
  const double found = largest_scale_that_fits(
      {.hollow = hollow, .body = body, .cover = cover, .apart = {}, .lying = Lying::level});
  CHECK(found <= scale * 1.0001);  // the balls' poles, where they are tight, are corners
  CHECK(found >= scale / 1.0055);
  const PackingTask task{.hollow = hollow,
                         .body = test::scaled(body, found),
                         .cover = cover,
                         .lying = Lying::level,
                         .most = 1};
  CHECK(packed(task).places.size() == 1);
}

TEST_CASE("nothing fits where the cover leaves no room", "[geometry][packing]") {
  const PackingTask task = standing(round_hollow(37), 40 * millimetre);
  CHECK(packed(task).places.empty());
  CHECK(largest_scale_that_fits(task) == 0);
}

TEST_CASE("a body may lie on the third level with none below it", "[geometry][packing]") {
  // Once written beyond the end: levels were counted by the bodies.
  Arrangement one;
  one.poses.resize(1);
  one.level = {2};
  std::vector<double> slope;
  PackingSlope lifted(one, 1, slope);
  lifted.add(0, {1, 0, 0}, {0, 0, 3});
  lifted.keep_to_rules();
  CHECK(slope[2] == 3);
}

}  // namespace brimwright::geometry
