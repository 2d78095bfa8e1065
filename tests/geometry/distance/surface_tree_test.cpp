#include "geometry/distance/surface_tree.h"

#include "any_placement.h"
#include "random_bodies.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using std::numbers::pi;
using test::any_placement;
using test::between;
using test::box;
using test::combined;

double gap_mm(const SurfaceTree& a, const Placement& a_at, const SurfaceTree& b,
              const Placement& b_at) {
  return gap_between(a, a_at, b, b_at).width / millimetre;
}

double gap_mm(const TriangleMesh& a, const TriangleMesh& b) {
  return gap_mm(SurfaceTree(a), {}, SurfaceTree(b), {});
}

/// About the origin.
TriangleMesh cube(double half) { return box({-half, -half, -half}, {half, half, half}); }

TriangleMesh ball_about_origin(double radius, std::uint32_t rings = 48) {
  return test::moved(test::ball(radius, rings, 2 * rings), {0, 0, -radius});
}

/// How far the facets of such a ball may lie under the true one: the sagitta of an arc from ring to
/// ring and of one from side to side.
double sagitta(double radius, std::uint32_t rings = 48) {
  return 2 * radius * (1 - std::cos(pi / 2 / rings));
}

TEST_CASE("cubes are as far apart as their faces, edges or corners", "[surface_tree]") {
  const SurfaceTree unit(cube(1));
  const auto gap_at = [&](const Vector& move) { return gap_mm(unit, {}, unit, {.move_mm = move}); };
  CHECK(gap_at({5, 0.5, 0}) == 3);    // face to face
  CHECK(gap_at({5, -6, 0.3}) == 5);   // edge to edge: 3, 4, 5
  CHECK(gap_at({5, 6, 14}) == 13);    // corner to corner: 3, 4, 12, 13
  CHECK(gap_at({2, 0.5, 0.5}) == 0);  // touching
  CHECK(gap_at({2, 2, 2}) == 0);      // touching at a corner
  CHECK(gap_at({1, 1, 1}) == 0);      // crossing
  CHECK(gap_at({0, 0, 0}) == 0);      // one in the place of the other
}

TEST_CASE("crossed edges and standing corners are measured between their vertices",
          "[surface_tree]") {
  const Angle none{}, eighth = Angle::in_degrees(45);
  const SurfaceTree unit(cube(1));
  // Each turned onto an edge, sqrt 2 from its middle, one edge along x and the other along y.
  const Placement along_x = {turned_about_axes(eighth, none, none), {0, 0, 0}};
  const Placement along_y = {turned_about_axes(none, eighth, none), {0.1, 0.2, 10}};
  const Gap crossed = gap_between(unit, along_x, unit, along_y);
  CHECK_THAT(crossed.width / millimetre, WithinAbs(10 - 2 * std::sqrt(2.0), 1e-14));
  CHECK_THAT(length(crossed.on_first_mm - Vector{0.1, 0, std::sqrt(2.0)}), WithinAbs(0, 1e-14));
  // Stood on a corner, which is sqrt 3 from its middle: turned about x by 45 degrees, then about y
  // until the space diagonal is plumb, tan = 1 / sqrt 2.
  const Placement on_corner = {
      turned_about_axes(eighth, Angle::in_radians(std::atan(1 / std::sqrt(2.0))), none),
      {0.2, 0.3, 10}};
  const Gap standing = gap_between(unit, {}, unit, on_corner);
  CHECK_THAT(standing.width / millimetre, WithinAbs(10 - 1 - std::sqrt(3.0), 1e-14));
  CHECK_THAT(length(standing.on_first_mm - Vector{0.2, 0.3, 1}), WithinAbs(0, 1e-14));
  CHECK_THAT(length(standing.on_second_mm - Vector{0.2, 0.3, 10 - std::sqrt(3.0)}),
             WithinAbs(0, 1e-14));
}

TEST_CASE("a cube in a box has its cover to each wall, and is told which", "[surface_tree]") {
  struct Row {
    Vector at;
    double cover;
    Vector wall_normal;
  };
  const std::vector<Row> rows = {
      {{-7, 0, 0}, 2, {-1, 0, 0}}, {{8, 0, 0}, 1, {1, 0, 0}},   {{0, -7.5, 1}, 1.5, {0, -1, 0}},
      {{1, 8, 1}, 1, {0, 1, 0}},   {{0, 1, -6}, 3, {0, 0, -1}}, {{2, 1, 7}, 2, {0, 0, 1}},
  };
  const SurfaceTree walls(cube(10)), inner(cube(1));
  for (const Row& row : rows) {
    const Gap gap = gap_between(inner, {.move_mm = row.at}, walls, {});
    CHECK(gap.width / millimetre == row.cover);
    CHECK(gap.second_normal == row.wall_normal);
    CHECK(gap.on_second_mm - gap.on_first_mm == row.wall_normal * row.cover);
  }
}

TEST_CASE("balls are as far apart as their middles less their radii, but for their facets",
          "[surface_tree]") {
  const SurfaceTree small(ball_about_origin(12)), large(ball_about_origin(20));
  const double least_flat = sagitta(12) + sagitta(20);
  rc::prop("outside and inside", [&] {
    const Placement at = any_placement(60);
    const double middles = length(at.move_mm);
    const double measured = gap_mm(small, {}, large, at);
    if (middles > 32) {
      RC_ASSERT(measured >= middles - 32 - 1e-9);
      RC_ASSERT(measured <= middles - 32 + least_flat);
    } else if (middles < 8) {  // facets of the larger lie nearer, those of the smaller farther
      RC_ASSERT(measured >= 8 - middles - sagitta(20));
      RC_ASSERT(measured <= 8 - middles + sagitta(12));
    } else if (middles < 32 - least_flat && middles > 8 + least_flat) {
      RC_ASSERT(measured == 0);
    }
  });
}

TEST_CASE("a ball in the hole of a ring has the ring's inner radius less its own",
          "[surface_tree]") {
  const double measured = gap_mm(ball_about_origin(5), test::torus(20, 6, 64, 128));
  // 20 - 6 - 5, and up to the sagitta of the ball's facets more, of the ring's less
  CHECK_THAT(measured, WithinAbs(9, sagitta(5) + 20 * (1 - std::cos(pi / 128))));
}

TEST_CASE("two balls that only look at each other through many facets keep their gap when refined",
          "[surface_tree]") {
  // Cutting facets into four in their own planes changes no distance.
  const TriangleMesh coarse = ball_about_origin(10, 6);
  const TriangleMesh fine = test::refined(test::refined(coarse));
  const TriangleMesh other = test::moved(coarse, {13, 14, 15});
  CHECK_THAT(gap_mm(fine, test::moved(fine, {13, 14, 15})),
             WithinAbs(gap_mm(coarse, other), 1e-12));
}

/// Something with hollows, arms and flats.
TriangleMesh any_body() {
  const int kind = *rc::gen::inRange(0, 4);
  if (kind == 0) return test::torus(between(3, 8), between(0.5, 2.5), 9, 17);
  if (kind == 1) return ball_about_origin(between(1, 8), 7);
  if (kind == 2) return test::stretched(cube(1), {between(0.5, 9), between(0.5, 9), 3});
  return test::obelisk(between(2, 6), between(2, 6), between(0.1, 4), 1, between(1, 12));
}

TEST_CASE("the gap is the same from either side and wherever both are taken together",
          "[surface_tree]") {
  rc::prop("symmetric, and no rigid motion changes it", [] {
    const SurfaceTree first(any_body()), second(any_body());
    const Placement first_at = any_placement(8), second_at = any_placement(8);
    const Placement moved = any_placement(100);
    const double measured = gap_mm(first, first_at, second, second_at);
    RC_ASSERT(std::abs(gap_mm(second, second_at, first, first_at) - measured) < 1e-9);
    const double elsewhere =
        gap_mm(first, combined(moved, first_at), second, combined(moved, second_at));
    RC_ASSERT(std::abs(elsewhere - measured) < 1e-9);
    const double as_made =
        gap_mm(placed(first.solid(), first_at), placed(second.solid(), second_at));
    RC_ASSERT(std::abs(as_made - measured) < 1e-9);
  });
}

TEST_CASE("its two points lie on the two surfaces and are the gap apart", "[surface_tree]") {
  rc::prop("points", [] {
    const SurfaceTree first(any_body()), second(any_body());
    const Placement first_at = any_placement(9), second_at = any_placement(9);
    const Gap gap = gap_between(first, first_at, second, second_at);
    const double apart = length(gap.on_second_mm - gap.on_first_mm);
    RC_ASSERT(std::abs(apart - gap.width / millimetre) < 1e-9);
    const SurfaceTree first_there(placed(first.solid(), first_at));
    const SurfaceTree second_there(placed(second.solid(), second_at));
    RC_ASSERT(std::abs(first_there.signed_distance_mm(gap.on_first_mm)) < 1e-9);
    RC_ASSERT(std::abs(second_there.signed_distance_mm(gap.on_second_mm)) < 1e-9);
    RC_ASSERT(std::abs(length(gap.second_normal) - 1) < 1e-12);
  });
}

TEST_CASE("asked whether the gap is at least so wide, it says what the gap says",
          "[surface_tree]") {
  rc::prop("yes up to the gap, no above it", [] {
    const SurfaceTree first(any_body()), second(any_body());
    const Placement first_at = any_placement(9), second_at = any_placement(9);
    const Length gap = gap_between(first, first_at, second, second_at).width;
    const auto says = [&](Length width) {
      return is_gap_at_least(width, first, first_at, second, second_at);
    };
    RC_ASSERT(says(0.999999 * gap));
    RC_ASSERT(says(gap - 1e-9 * millimetre));
    RC_ASSERT(!says(gap + 1e-9 * millimetre));
    RC_ASSERT(!says(1.5 * gap + 0.1 * millimetre));
  });
}

TEST_CASE("cover never grows when what is inside grows about its middle", "[surface_tree]") {
  rc::prop("scaled up", [] {
    const SurfaceTree hollow(ball_about_origin(30, 12));
    const TriangleMesh body = any_body();
    const Placement at = any_placement(6);
    double last = HUGE_VAL;
    for (const double factor : {0.5, 0.8, 1.0, 1.1, 1.5}) {
      const double cover = gap_mm(SurfaceTree(test::scaled(body, factor)), at, hollow, {});
      RC_ASSERT(cover <= last + 1e-9);
      last = cover;
    }
  });
}

TEST_CASE("where one surface passes through a point inside the other, they cross",
          "[surface_tree]") {
  rc::prop("gap 0", [] {
    // A rod longer than any body here and thinner: neither can be inside the other.
    const SurfaceTree rod(test::stretched(cube(1), {0.2, 0.2, 40})), body(any_body());
    const auto& corners =
        body.solid().triangles[*rc::gen::inRange<std::size_t>(0, body.solid().triangles.size())];
    const auto& v = body.solid().vertices_mm;
    const Vector on_surface = (v[corners[0]] + v[corners[1]] + v[corners[2]]) * (1.0 / 3);
    Placement at = any_placement(0);
    at.move_mm = on_surface;
    RC_ASSERT(gap_mm(body, {}, rod, at) == 0);
    RC_ASSERT(!is_gap_at_least(1e-6 * millimetre, body, {}, rod, at));
  });
}

TEST_CASE("a box knows how deep inside or how far outside a point is", "[surface_tree]") {
  const SurfaceTree block(test::refined(test::refined(box({0, 0, 0}, {10, 20, 30}))));
  CHECK(block.signed_distance_mm({4, 9, 12}) == -4);
  CHECK(block.signed_distance_mm({5, 10, 28}) == -2);
  CHECK(block.signed_distance_mm({13, 5, 5}) == 3);
  CHECK(block.signed_distance_mm({13, 24, 5}) == 5);    // 3, 4 from an edge
  CHECK(block.signed_distance_mm({-3, 24, 42}) == 13);  // 3, 4, 12 from a corner
  CHECK(block.signed_distance_mm({10, 5, 5}) == 0);
  CHECK(block.signed_distance_mm({5, 5, 30}) == 0);
}

TEST_CASE("what lies in the hollow of a solid lies outside of it", "[surface_tree]") {
  const TriangleMesh shell = test::together(cube(10), test::inside_out(cube(5)));
  const SurfaceTree hollow(shell);
  CHECK_FALSE(hollow.contains({0, 0, 0}));
  CHECK(hollow.contains({7, 0, 0}));
  CHECK(hollow.signed_distance_mm({4, 0, 0}) == 1);
  CHECK(hollow.signed_distance_mm({7, 0, 0}) == -2);
  CHECK(gap_mm(shell, cube(2)) == 3);
}

/// A body of cells of one millimetre, mostly full of holes.
test::CellBody any_cells() {
  std::vector<test::Cut> cuts = {{true, {0, 0, 0}, {6, 6, 6}}};
  for (int n = *rc::gen::inRange(0, 12); n-- > 0;) {
    test::Cut cut{.adds = *rc::gen::inRange(0, 4) == 0, .low = {}, .high = {}};
    for (std::size_t i = 0; i < 3; ++i) {
      cut.low[i] = *rc::gen::inRange(0, 6);
      cut.high[i] = std::min(6, cut.low[i] + *rc::gen::inRange(1, 4));
    }
    cuts.push_back(cut);
  }
  return test::CellBody({6, 6, 6}, cuts);
}

TEST_CASE("points over edges and corners are told in or out as surely as any others",
          "[surface_tree]") {
  // The cells themselves are the truth. Half of the points lie plumb above corners and edges.
  rc::prop("cells", [] {
    const test::CellBody cells = any_cells();
    const SurfaceTree body(cells.mesh());
    const auto cells_at = [](int twice) {  // those that meet at this many half millimetres
      return std::array<int, 2>{(twice + 1) / 2 - 1, twice / 2};
    };
    for (int n = 0; n < 50; ++n) {
      const std::array<int, 3> twice = {*rc::gen::inRange(0, 13), *rc::gen::inRange(0, 13),
                                        *rc::gen::inRange(0, 13)};
      int solid = 0;
      for (const int x : cells_at(twice[0])) {
        for (const int y : cells_at(twice[1])) {
          for (const int z : cells_at(twice[2])) solid += cells.solid(x, y, z);
        }
      }
      if (solid != 0 && solid != 8) continue;  // on the surface
      RC_ASSERT(body.contains({twice[0] / 2.0, twice[1] / 2.0, twice[2] / 2.0}) == (solid == 8));
    }
  });
}

TEST_CASE("points within a hair of a slanting surface are told in or out exactly",
          "[surface_tree]") {
  // A wedge whose upper face is x + y + z = 1 (in eighths, so that doubles are exact).
  const TriangleMesh wedge = {{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
                              {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}}};
  const SurfaceTree tree(wedge);
  const double on = 0.5, hair = std::ldexp(1.0, -53);
  CHECK(tree.contains({0.25, 0.25, on - hair}));
  CHECK_FALSE(tree.contains({0.25, 0.25, std::nextafter(on, 1.0)}));
}

}  // namespace
}  // namespace brimwright::geometry
