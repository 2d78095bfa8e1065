#include "geometry/distance/placement.h"

#include "any_placement.h"
#include "geometry/surface/enclosed_volume.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;

constexpr Angle none{};
const Angle quarter = Angle::in_degrees(90);

Vector turned_point(const Vector& point, Angle x, Angle y, Angle z) {
  return placed(point, {.turn = turned_about_axes(x, y, z)});
}

TEST_CASE("a quarter turn is anticlockwise seen from the axis's positive end", "[placement]") {
  // the right-hand rule: x to y about z, y to z about x, z to x about y
  CHECK(turned_point({1, 0, 0}, none, none, quarter) == Vector{0, 1, 0});
  CHECK(turned_point({0, 1, 0}, quarter, none, none) == Vector{0, 0, 1});
  CHECK(turned_point({0, 0, 1}, none, quarter, none) == Vector{1, 0, 0});
}

TEST_CASE("turns go about x first, then y, then z, the axes staying where they are",
          "[placement]") {
  // y goes to z about x, that to x about y, that to y about z
  CHECK(turned_point({0, 1, 0}, quarter, quarter, quarter) == Vector{0, 1, 0});
  // x stays, goes to -z about y, and stays there about z
  CHECK(turned_point({1, 0, 0}, quarter, quarter, quarter) == Vector{0, 0, -1});
}

TEST_CASE("a turn by 30 degrees about z brings x to its cosine and sine", "[placement]") {
  const Vector point = turned_point({2, 0, 5}, none, none, Angle::in_degrees(30));
  CHECK_THAT(point[0], WithinRel(std::sqrt(3.0), 1e-15));  // 2 cos 30 = sqrt 3
  CHECK_THAT(point[1], WithinRel(1.0, 1e-15));             // 2 sin 30 = 1
  CHECK(point[2] == 5);
}

TEST_CASE("a mesh is turned first and then moved, and its facets stay as they are", "[placement]") {
  const TriangleMesh made = test::box({0, 0, 0}, {4, 2, 1});
  const TriangleMesh put = placed(made, {turned_about_axes(none, none, quarter), {100, 0, 0}});
  const auto [low, high] = bounding_box(put);
  CHECK(low == Vector{98, 0, 0});
  CHECK(high == Vector{100, 4, 1});
  CHECK(put.triangles == made.triangles);
}

TEST_CASE("what is centred on the floor stands on it, its box round the axis", "[placement]") {
  const auto [low, high] = bounding_box(centred_on_floor(test::box({3, -8, 5}, {7, 2, 11})));
  CHECK(low == Vector{-2, -5, 0});
  CHECK(high == Vector{2, 5, 6});
}

TEST_CASE("wherever a solid is put, it keeps its distances, and its volume's sign", "[placement]") {
  rc::prop("a rotation, never a mirror", [] {
    const Placement at = test::any_placement(100);
    const Vector a = test::any_point(50), b = test::any_point(50);
    RC_ASSERT(std::abs(length(placed(a, at) - placed(b, at)) - length(a - b)) < 1e-12);
    const TriangleMesh block = test::box({0, 0, 0}, {3, 4, 5});
    RC_ASSERT(std::abs(enclosed_volume(placed(block, at)) / cubic_millimetre - 60) < 1e-9);
  });
}

}  // namespace
}  // namespace brimwright::geometry
