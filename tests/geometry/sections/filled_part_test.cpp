#include "geometry/sections/filled_part.h"

#include "geometry/distance/placement.h"
#include "geometry/levels/level_curve.h"
#include "geometry/levels/tilted_pour.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/sections/outline_filling.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>
#include <map>
#include <stdexcept>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

/// What the strictest check we have says of the volume: closed, nothing crossing, facing outward.
double sound_volume(const TriangleMesh& part) {
  if (part.triangles.empty()) return 0;
  const CheckedSolid checked = checked_solid(part, "the part");
  for (const Remark& remark : checked.remarks) UNSCOPED_INFO(remark.text);
  CHECK(checked.remarks.empty());
  return enclosed_volume(checked.solid) / cubic_millimetre;
}

std::vector<TriangleMesh> solids() {
  return {test::box({-10, 5, 2}, {30, 25, 32}),
          test::torus(30, 10, 9, 14),
          test::on_its_side(test::torus(30, 10, 8, 12)),
          test::turned({{0, 0}, {22, 3}, {18, 9}, {30, 21}, {0, 27}}, 11),
          test::turned({{20, 0}, {20, 10}, {35, 10}, {35, 30}}, 24),
          test::moved(test::ball(25, 12, 16), {1000, -2000, 500}),
          test::together(test::box({0, 0, 0}, {60, 60, 40}),
                         test::inside_out(test::box({20, 20, 10}, {40, 40, 40 - 10}))),
          test::together(test::box({0, 0, 0}, {10, 10, 20}), test::box({12, 0, 5}, {20, 10, 25}))};
}

/// Random but sound: a turned profile lying anyhow.
TriangleMesh any_solid() {
  std::vector<test::Turned> profile = {{*rc::gen::inRange(0, 20) * 1.0, 0}};
  double height = 0;
  for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
    height += *rc::gen::inRange(1, 9);
    profile.push_back({*rc::gen::inRange(1, 40) * 1.0, height});
  }
  TriangleMesh solid = test::turned(profile, *rc::gen::inRange<std::uint32_t>(3, 9));
  if (*rc::gen::arbitrary<bool>()) solid = welded(test::refined(solid));
  for (int i = *rc::gen::inRange(0, 4); i > 0; --i) solid = test::on_its_side(solid);
  return test::turned_about_z(solid, *rc::gen::inRange(0, 8) * 0.4);
}

}  // namespace

TEST_CASE("what a plane left nothing of has no box, and asking for one is told", "[geometry]") {
  const TriangleMesh nothing = filled_part(test::box({0, 0, 0}, {10, 10, 10}), Length());
  REQUIRE(nothing.triangles.empty());
  CHECK_FALSE(box_if_any(nothing));
  CHECK_THROWS_AS(bounding_box(nothing), std::logic_error);
  CHECK_THROWS_AS(LevelCurve::of_solid(nothing), std::logic_error);
  CHECK_THROWS_AS(centred_on_floor(nothing), std::logic_error);
}

TEST_CASE("the fill below a level is a closed solid that holds what the level curve says",
          "[geometry]") {
  const TriangleMesh solid = GENERATE(from_range(solids()));
  const LevelCurve curve = LevelCurve::of_solid(solid);
  // Tenths meet vertices and facets of many of the solids, the odd shares do not.
  for (const double share : {0.1, 0.2, 1.0 / 3, 0.4321, 0.5, 0.75, 0.9, 0.999, 1.0}) {
    CAPTURE(share);
    const Length depth = share * curve.height();
    const double expected = curve.volume_below(depth) / cubic_millimetre;
    CHECK_THAT(sound_volume(filled_part(solid, depth)), WithinRel(expected, 1e-9));
  }
  CHECK(filled_part(solid, Length()).triangles.empty());
}

TEST_CASE("layers between levels are closed and together are the whole fill", "[geometry]") {
  const TriangleMesh solid = GENERATE(from_range(solids()));
  const LevelCurve curve = LevelCurve::of_solid(solid);
  double sum = 0;
  const std::vector<double> shares = {0, 0.125, 0.5, 0.625, 1};
  for (std::size_t i = 1; i < shares.size(); ++i) {
    const Length from = shares[i - 1] * curve.height(), to = shares[i] * curve.height();
    const double layer = sound_volume(layer_between(solid, from, to));
    const Volume expected = curve.volume_below(to) - curve.volume_below(from);
    CHECK_THAT(layer, WithinRel(expected / cubic_millimetre, 1e-9));
    sum += layer;
  }
  CHECK_THAT(sum, WithinRel(curve.brimful() / cubic_millimetre, 1e-12));
}

TEST_CASE("a solid cut anyhow leaves two closed solids that hold as much as it did",
          "[geometry][law]") {
  rc::prop("the part below and the part above are the whole", [] {
    const TriangleMesh solid = any_solid();
    const Tilt tilt{Angle::in_degrees(*rc::gen::inRange(0, 18) * 5.0),
                    Angle::in_degrees(*rc::gen::inRange(0, 24) * 15.0)};
    const TriangleMesh turned = tilted(solid, tilt);
    const Box box = bounding_box(turned);
    const double share = *rc::gen::inRange(1, 40) / 40.0;
    const Plane plane = Plane::level(box.low_mm[2] + share * (box.high_mm[2] - box.low_mm[2]));
    const TriangleMesh below = part_below(turned, plane), above = part_above(turned, plane);
    double sum = 0;
    for (const TriangleMesh& part : {below, above})
      if (!part.triangles.empty())
        sum += enclosed_volume(checked_solid(part, "the part").solid) / cubic_millimetre;
    const double whole = enclosed_volume(turned) / cubic_millimetre;
    RC_ASSERT(std::abs(sum - whole) <= 1e-12 * whole);
    const double curve =
        LevelCurve::of_solid(turned).volume_below((plane.offset_mm - box.low_mm[2]) * millimetre) /
        cubic_millimetre;
    RC_ASSERT(std::abs(enclosed_volume(below) / cubic_millimetre - curve) <= 1e-11 * whole);
  });
}

TEST_CASE("outlines are filled up to their holes and no further", "[geometry]") {
  // A 6 x 6 square with a 2 x 2 hole; the third is a square by itself.
  PlaneCut cut{.vertices_mm = {{0, 0, 5},
                               {6, 0, 5},
                               {6, 6, 5},
                               {0, 6, 5},
                               {2, 2, 5},
                               {2, 4, 5},
                               {4, 4, 5},
                               {4, 2, 5},
                               {8, 0, 5},
                               {9, 0, 5},
                               {9, 1, 5},
                               {8, 1, 5}},
               .below = {},
               .outlines = {{0, 1, 2, 3}, {4, 5, 6, 7}, {8, 9, 10, 11}}};
  double area = 0;
  for (const auto& [ia, ib, ic] : outline_filling(cut, Plane::level(5))) {
    const auto &a = cut.vertices_mm[ia], &b = cut.vertices_mm[ib], &c = cut.vertices_mm[ic];
    const double part = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
    CHECK(part > 0);  // facing up
    area += part;
  }
  CHECK_THAT(area, WithinAbs(6.0 * 6 - 2 * 2 + 1, 1e-14));
  CHECK(cut.vertices_mm.size() == 12);
}

TEST_CASE("an outline that rounding made cross itself still closes the solid", "[geometry]") {
  // A figure of eight, whose crossing is no vertex: two triangles of 1, run opposite ways.
  PlaneCut cut{.vertices_mm = {{0, 0, 0}, {2, 2, 0}, {2, 0, 0}, {0, 2, 0}},
               .below = {},
               .outlines = {{0, 1, 2, 3}}};
  std::map<std::pair<std::uint32_t, std::uint32_t>, int> runs;
  double area = 0;
  for (const auto& facet : outline_filling(cut, Plane::level(0))) {
    for (std::size_t i = 0; i < 3; ++i) {
      ++runs[{facet[i], facet[(i + 1) % 3]}];
      --runs[{facet[(i + 1) % 3], facet[i]}];
    }
    const auto &a = cut.vertices_mm[facet[0]], &b = cut.vertices_mm[facet[1]],
               &c = cut.vertices_mm[facet[2]];
    area += ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
  }
  CHECK(runs[{0, 1}] == 1);
  CHECK(runs[{1, 2}] == 1);
  CHECK(runs[{2, 3}] == 1);
  CHECK(runs[{3, 0}] == 1);
  CHECK(std::count_if(runs.begin(), runs.end(), [](const auto& r) { return r.second == 1; }) == 4);
  CHECK_THAT(area, WithinAbs(0, 1e-14));
}

TEST_CASE("a surface that is open where it is cut is a fault of ours, not a figure", "[geometry]") {
  TriangleMesh open = test::box({0, 0, 0}, {10, 10, 10});
  open.triangles.erase(open.triangles.begin() + 4);  // half of a wall
  CHECK_THROWS_AS(filled_part(open, 5 * millimetre), std::logic_error);
}

}  // namespace brimwright::geometry
