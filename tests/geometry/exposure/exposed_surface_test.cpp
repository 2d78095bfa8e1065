#include "geometry/exposure/exposed_surface.h"

#include "geometry/beads/bead.h"
#include "geometry/surface/vectors.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <stdexcept>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::moved;

constexpr double no_floor = -1e6;

double surface_mm2(const TriangleMesh& mesh) {
  return std::accumulate(mesh.triangles.begin(), mesh.triangles.end(), 0.0,
                         [&](double sum, const auto& f) { return sum + area_mm2(mesh, f); });
}
std::vector<double> in_mm2(const std::vector<Area>& areas) {
  std::vector<double> plain;
  for (const Area area : areas) plain.push_back(area / square_millimetre);
  return plain;
}
double sum_mm2(const std::vector<Area>& areas) {
  return std::accumulate(areas.begin(), areas.end(), Area()) / square_millimetre;
}

/// A ball about `middle`. Its facets lie inside the ball by 0.03 % of its radius at most, so that
/// their area is less by about as much.
TriangleMesh ball(double radius, const Vector& middle) {
  return moved(test::ball(radius, 60, 120), middle - Vector{0, 0, radius});
}

TEST_CASE("two balls run into each other hide a cap of each", "[geometry][exposed]") {
  // Archimedes: a cap of height h has 2 pi R h. Each ball keeps R + half the distance of it.
  const double radius = 10, apart = GENERATE(4.0, 9.3, 16.0);
  const Vector way = Vector{2, -1, 2} * (apart / 3);
  const auto seen = exposed_surface({ball(radius, {0, 0, 0}), ball(radius, way)}, no_floor, 0.5);
  const double left = 2 * pi * radius * (radius + apart / 2);
  CHECK_THAT(seen.area[0] / square_millimetre, WithinRel(left, 2e-3));
  CHECK_THAT(seen.area[1] / square_millimetre, WithinRel(left, 2e-3));
}

TEST_CASE("two rods that cross at right angles hide eight squares of their radius on each",
          "[geometry][exposed]") {
  // The surface of what both fill, 16 r^2 (Archimedes, The Method; Steinmetz), half of it each's.
  const auto rod =
      swept({StraightBead{.length = 60 * millimetre}}, RoundOpening{.radius = 5 * millimetre}, 1)
          .front();
  const auto seen = exposed_surface({rod, test::turned_about_z(rod, pi / 2)}, no_floor, 0.25);
  const double left = 2 * pi * 5 * 60 + 2 * pi * 25 - 8 * 25;
  for (const double area : in_mm2(seen.area)) CHECK_THAT(area, WithinRel(left, 4e-3));
}

TEST_CASE("a ball sunk to its middle shows half a ball, and from above a disc",
          "[geometry][exposed]") {
  const auto seen = exposed_surface({ball(10, {3, 4, 5})}, 5);
  CHECK_THAT(sum_mm2(seen.area), WithinRel(2 * pi * 100, 2e-3));
  CHECK_THAT(sum_mm2(seen.upward), WithinRel(2 * pi * 100, 2e-3));
  CHECK_THAT(sum_mm2(seen.from_above), WithinRel(pi * 100, 2e-3));
}

TEST_CASE("a cone and a box on the floor show all but their foot", "[geometry][exposed]") {
  // A cone's side is pi r sqrt(r^2 + h^2); of 120 flats it is short by 1 - cos(pi / 120) at most.
  const auto cone = test::turned({{0, 0}, {12, 0}, {0, 9}}, 120);
  CHECK_THAT(sum_mm2(exposed_surface({cone}, 0, 1).area), WithinRel(pi * 12 * 15, 1e-3));
  const auto block = test::box({-3, -4, 0}, {3, 4, 5});
  CHECK_THAT(sum_mm2(exposed_surface({block}, 0, 1).area), WithinRel(48 + 2 * 30 + 2 * 40, 1e-12));
}

TEST_CASE("a box on a box hides what it stands on and the floor the rest", "[geometry][exposed]") {
  const auto seen = exposed_surface(
      {test::box({-20, -20, 0}, {20, 20, 10}), test::box({-10, -10, 10}, {10, 10, 20})}, 0);
  // Measured with a ruler: walls 4 x 40 x 10 and 4 x 20 x 10, tops 1600 - 400 and 400. The upper
  // box's edges fall on edges of the lower's pieces, so that the sums are exact.
  CHECK_THAT(seen.area[0] / square_millimetre, WithinRel(1600 + 1200, 1e-12));
  CHECK_THAT(seen.area[1] / square_millimetre, WithinRel(800 + 400, 1e-12));
  CHECK_THAT(seen.upward[0] / square_millimetre, WithinRel(1200, 1e-12));
  CHECK_THAT(seen.from_above[0] / square_millimetre, WithinRel(1200, 1e-12));
  CHECK_THAT(seen.from_above[1] / square_millimetre, WithinRel(400, 1e-12));
}

TEST_CASE("a roof hides from above what still faces up", "[geometry][exposed]") {
  const auto seen = exposed_surface(
      {test::box({-20, -20, 0}, {20, 20, 10}), test::box({-10, -10, 15}, {10, 10, 20})}, 0);
  CHECK_THAT(seen.upward[0] / square_millimetre, WithinRel(1600, 1e-12));
  CHECK_THAT(seen.from_above[0] / square_millimetre, WithinRel(1200, 1e-12));
}

TEST_CASE("what is buried shows nothing and hides nothing", "[geometry][exposed]") {
  const TriangleMesh block = test::box({0, 0, 0}, {40, 40, 40});
  const auto seen = exposed_surface({block, ball(8, {20, 20, 20})}, no_floor);
  CHECK_THAT(seen.area[0] / square_millimetre, WithinRel(6 * 1600, 1e-12));
  CHECK(seen.area[1] == Area());
  CHECK(seen.from_above[1] == Area());
}

TEST_CASE("a bead pressed into its own turns shows less than its surface", "[geometry][exposed]") {
  // A spiral on a cylinder with turns half a bead apart, many of them: between two ends it is a
  // tube of beads; seen from outside each turn shows the arc to where the next begins. A circle of
  // radius r met by one r further up keeps r from there on: 60 of each quarter's 90 degrees are
  // hidden on either side, 2 x 120 of 360 degrees. So one turn more shows another third.
  const Opening opening = RoundOpening{.radius = 4 * millimetre};
  const auto shown = [&](double turns) {
    const Length rise = turns * 4 * millimetre, radius = 40 * millimetre;
    const auto bead = swept({ConicalSpiral{turns, radius, radius, rise}}, opening, 1, 0.7);
    return sum_mm2(exposed_surface(bead, no_floor, 0.7).area);
  };
  const double turn = 2 * pi * std::hypot(40, 4 / (2 * pi));
  CHECK_THAT(shown(5) - shown(4), WithinRel(2 * pi * 4 * turn / 3, 0.01));
}

TEST_CASE("a spiral in two goes shows what it shows in one", "[geometry][exposed]") {
  const Opening opening = RoundOpening{.radius = 4 * millimetre};
  const auto mm = [](double x) { return x * millimetre; };
  const auto one = swept({ConicalSpiral{3, mm(20), mm(5), mm(21)}}, opening, 1);
  const auto two = swept({ConicalSpiral{1.5, mm(20), mm(12.5), mm(10.5)},
                          ConicalSpiral{1.5, mm(12.5), mm(5), mm(10.5)}},
                         opening, 1);
  CHECK_THAT(sum_mm2(exposed_surface(two, 0).area),
             WithinRel(sum_mm2(exposed_surface(one, 0).area), 5e-3));
}

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 100'001) / 100'000;
}
TriangleMesh any_part() {
  const Vector at = {between(-20, 20), between(-20, 20), between(0, 20)};
  switch (*rc::gen::inRange(0, 3)) {
    case 0:
      return moved(test::ball(between(2, 15), 12, 20), at);
    case 1:
      return moved(test::torus(between(8, 15), between(1, 6), 10, 24), at);
    default:
      return moved(test::box({0, 0, 0}, {between(1, 30), between(1, 30), 7}), at);
  }
}

TEST_CASE("another part never makes the others show more", "[geometry][exposed][law]") {
  rc::prop("area, upward and from above, part by part", [] {
    std::vector<TriangleMesh> parts = {any_part(), any_part()};
    const auto before = exposed_surface(parts, 5, 2);
    parts.push_back(any_part());
    const auto after = exposed_surface(parts, 5, 2);
    for (std::size_t i = 0; i < 2; ++i) {
      RC_ASSERT(after.area[i] <= before.area[i]);
      RC_ASSERT(after.upward[i] <= before.upward[i]);
      RC_ASSERT(after.from_above[i] <= before.from_above[i]);
    }
  });
}

TEST_CASE("no part shows more than its surface", "[geometry][exposed][law]") {
  rc::prop("from above <= upward <= exposed <= surface", [] {
    const std::vector<TriangleMesh> parts = {any_part(), any_part(), any_part()};
    const auto seen = exposed_surface(parts, no_floor, 2);
    for (std::size_t i = 0; i < 3; ++i) {
      RC_ASSERT(seen.from_above[i] <= seen.upward[i]);
      RC_ASSERT(seen.upward[i] <= seen.area[i]);
      RC_ASSERT(seen.area[i] / square_millimetre <= surface_mm2(parts[i]) * (1 + 1e-9));
    }
  });
}

TEST_CASE("a part alone shows all of itself, whatever it is cut to", "[geometry][exposed][law]") {
  rc::prop("its whole surface", [] {
    const TriangleMesh part = any_part();
    const double area = sum_mm2(exposed_surface({part}, no_floor, between(0.5, 50)).area);
    RC_ASSERT(std::abs(area / surface_mm2(part) - 1) < 1e-9);
  });
}

TEST_CASE("a slab far larger than its pieces is cut more coarsely, not for ever",
          "[geometry][exposed]") {
  const TriangleMesh slab = test::box({0, 0, 0}, {2000, 2000, 30});
  const auto seen = exposed_surface({slab}, 0, 0.01);
  CHECK_THAT(sum_mm2(seen.from_above), WithinRel(4e6, 1e-9));
  CHECK_THROWS_AS(exposed_surface({slab}, 0, 0), std::logic_error);
  CHECK(exposed_surface({}, 0).area.empty());
}

}  // namespace
}  // namespace brimwright::geometry
