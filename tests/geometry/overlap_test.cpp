#include "geometry/overlap.h"

#include "geometry/enclosed_volume.h"
#include "random_bodies.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;
using test::box;
using test::moved;
using test::together;

double mm3(const TriangleMesh& solid) { return enclosed_volume(solid) / cubic_millimetre; }

double common_mm3(const TriangleMesh& first, const TriangleMesh& second) {
  return common_volume(SurfaceTree(first), SurfaceTree(second), "embed.stl") / cubic_millimetre;
}

Standing standing(const TriangleMesh& first, const TriangleMesh& second) {
  return standing_of(SurfaceTree(first), SurfaceTree(second));
}

TriangleMesh cube(double half) { return box({-half, -half, -half}, {half, half, half}); }

TEST_CASE("a solid is inside, around, apart from or across another", "[overlap]") {
  const TriangleMesh large = cube(10), small = cube(2);
  CHECK(standing(small, large) == Standing::inside);
  CHECK(standing(large, small) == Standing::around);
  CHECK(standing(small, moved(large, {30, 0, 0})) == Standing::apart);
  CHECK(standing(small, moved(large, {9, 0, 0})) == Standing::crossing);
  CHECK(standing(small, moved(large, {8, 0, 0})) == Standing::crossing);   // touching from within
  CHECK(standing(small, moved(large, {12, 0, 0})) == Standing::crossing);  // and from without
}

TEST_CASE("hollows count: what lies in one is apart, what lies between is not inside",
          "[overlap]") {
  const TriangleMesh shell = together(cube(10), test::inside_out(cube(5)));
  CHECK(standing(cube(2), shell) == Standing::apart);
  CHECK(standing(moved(cube(1), {7.5, 0, 0}), shell) == Standing::inside);
  const TriangleMesh filler = cube(7);  // fills the hollow and part of the shell
  CHECK(standing(filler, shell) == Standing::crossing);
  CHECK_THAT(common_mm3(filler, shell), WithinRel(14.0 * 14 * 14 - 1000, 1e-12));
  const TriangleMesh smaller_shell = together(cube(9), test::inside_out(cube(6)));
  CHECK(standing(smaller_shell, shell) == Standing::inside);
}

TEST_CASE("of two separate parts, one inside and one outside, the one inside is common",
          "[overlap]") {
  const TriangleMesh pair = together(cube(2), moved(cube(3), {30, 0, 0}));
  CHECK(standing(pair, cube(10)) == Standing::crossing);
  CHECK_THAT(common_mm3(pair, cube(10)), WithinRel(64.0, 1e-12));
}

TEST_CASE("inside, the inner one's volume is common; apart, none is", "[overlap]") {
  const TriangleMesh ring = test::torus(6, 2, 12, 30);
  CHECK(common_mm3(ring, cube(10)) == mm3(ring));
  CHECK(common_mm3(cube(10), ring) == mm3(ring));
  CHECK(common_mm3(ring, moved(cube(2), {0, 0, 0})) == 0);  // in the hole
  CHECK(common_mm3(ring, moved(cube(2), {30, 0, 0})) == 0);
}

TEST_CASE("overlapping boxes have the box between them in common", "[overlap]") {
  const TriangleMesh first = box({0, 0, 0}, {10, 8, 6});
  CHECK_THAT(common_mm3(first, box({7, 5, 4}, {20, 20, 20})), WithinRel(3.0 * 3 * 2, 1e-12));
  CHECK_THAT(common_mm3(first, box({2, 3, -5}, {4, 6, 50})), WithinRel(2.0 * 3 * 6, 1e-12));
  CHECK_THAT(common_mm3(first, box({0, 0, 0}, {10, 8, 6})), WithinRel(480.0, 1e-12));
  CHECK_THAT(common_mm3(first, box({2, 3, 0}, {4, 6, 4})), WithinRel(24.0, 1e-12));  // on its floor
}

TEST_CASE("solids that touch from outside have nothing in common", "[overlap]") {
  const TriangleMesh block = box({0, 0, 0}, {10, 8, 6});
  CHECK(common_mm3(block, box({10, 0, 0}, {20, 8, 6})) == Approx(0).margin(1e-6));   // a face
  CHECK(common_mm3(block, box({10, 8, 0}, {20, 20, 6})) == Approx(0).margin(1e-6));  // an edge
  CHECK(common_mm3(block, box({10, 8, 6}, {20, 20, 9})) == Approx(0).margin(1e-6));  // a corner
}

TEST_CASE("a common part that touches itself along an edge is measured all the same", "[overlap]") {
  // Two steps that meet along the edge x = y = 5 only, within a block: CGAL has no surface for it.
  const TriangleMesh cross = test::CellBody({2, 2, 3}, {{true, {0, 0, 0}, {2, 2, 1}},
                                                        {true, {0, 0, 0}, {1, 1, 3}},
                                                        {true, {1, 1, 0}, {2, 2, 2}},
                                                        {true, {0, 1, 0}, {1, 2, 2}}})
                                 .mesh();
  const TriangleMesh slab = box({-1, -1, 1.5}, {3, 3, 4});
  // above 1.5: one cell by 1.5, two cells by 0.5
  CHECK_THAT(common_mm3(cross, slab), WithinRel(1.5 + 2 * 0.5, 1e-9));
}

TEST_CASE("balls have a lens in common, the finer their facets the more exactly", "[overlap]") {
  // Two balls of radius r with middles d apart: V = pi (4 r + d) (2 r - d)^2 / 12, two caps of
  // height r - d / 2.
  const double r = 10, d = 8;
  const double lens = pi * (4 * r + d) * (2 * r - d) * (2 * r - d) / 12;
  double last = HUGE_VAL;
  for (const std::uint32_t rings : {12U, 24U, 48U}) {
    const TriangleMesh ball = test::ball(r, rings, 2 * rings);
    const double off = lens - common_mm3(ball, moved(ball, {d, 0.1, 0}));
    CHECK(off > 0);         // facets lie under the ball
    CHECK(off < last / 3);  // a quarter at each doubling
    last = off;
  }
  CHECK(last < 0.01 * lens);
}

/// Cuts along whole numbers.
std::vector<test::Cut> any_cuts(std::mt19937& dice) {
  std::uniform_int_distribution<int> cell(0, 4);
  std::vector<test::Cut> cuts = {{true, {0, 0, 0}, {5, 5, 5}}};
  for (int n = 0; n < 7; ++n) {
    test::Cut cut{.adds = n % 3 == 2, .low = {}, .high = {}};
    for (std::size_t i = 0; i < 3; ++i) {
      cut.low[i] = cell(dice);
      cut.high[i] = std::min(5, cut.low[i] + 1 + cell(dice) / 2);
    }
    cuts.push_back(cut);
  }
  return cuts;
}

/// How much of the cell from a to a + 1 lies in that from b to b + 1, moved by `by`.
double shared(int a, int b, double by) { return std::max(0.0, 1 - std::abs(a - b - by)); }

double common_cells(const test::CellBody& a, const test::CellBody& b, const test::Point& by) {
  const auto cells_of = [](const test::CellBody& body) {
    std::vector<std::array<int, 3>> cells;
    for (int x = 0; x < 5; ++x) {
      for (int y = 0; y < 5; ++y) {
        for (int z = 0; z < 5; ++z) {
          if (body.solid(x, y, z)) cells.push_back({x, y, z});
        }
      }
    }
    return cells;
  };
  double sum = 0;
  for (const auto& [x, y, z] : cells_of(a)) {
    for (const auto& [u, v, w] : cells_of(b))
      sum += shared(x, u, by[0]) * shared(y, v, by[1]) * shared(z, w, by[2]);
  }
  return sum;
}

void check_cells(int bodies, double step) {
  std::mt19937 dice(20261125);
  std::uniform_int_distribution<int> offset(-4, 4);
  for (int n = 0; n < bodies; ++n) {
    const test::CellBody a({5, 5, 5}, any_cuts(dice)), b({5, 5, 5}, any_cuts(dice));
    const test::Point by = {step * offset(dice), step * offset(dice), step * offset(dice)};
    const TriangleMesh first = a.mesh(), second = moved(b.mesh(), by);
    const double truth = common_cells(a, b, by);
    const double common = common_mm3(first, second);
    INFO("body " << n);
    CHECK_THAT(common, WithinAbs(truth, 1e-6));
    CHECK_THAT(common_mm3(second, first), WithinAbs(truth, 1e-6));
    CHECK(common <= std::min(mm3(first), mm3(second)));
  }
}

TEST_CASE("bodies of cells have in common what their cells have, in whichever order", "[overlap]") {
  check_cells(12, 0.73);
}

TEST_CASE("so they have where faces lie in faces, edges on edges and corners on corners",
          "[overlap]") {
  check_cells(6, 1);
}

TEST_CASE("a surface that crosses itself is refused where another crosses it, with its file",
          "[overlap]") {
  const TriangleMesh crossed = together(cube(5), moved(cube(5), {3, 2, 1}));
  const TriangleMesh across = moved(cube(5), {-2, -3, -1});
  CHECK_THROWS_AS(common_mm3(crossed, across), UserError);
  CHECK_THROWS_WITH(common_mm3(crossed, across),
                    Contains("embed.stl") && Contains("the first crosses itself at ("));
  CHECK_THROWS_WITH(common_mm3(across, crossed), Contains("the second crosses itself at ("));
}

}  // namespace
}  // namespace brimwright::geometry
