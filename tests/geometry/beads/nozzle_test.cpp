#include "geometry/beads/nozzle.h"

#include "units/quantity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using Outline = std::vector<std::array<double, 2>>;

const Place here = {.file = "run.json", .field = "/pipe/nozzle"};

double area_mm2(const Opening& opening) { return area_of(opening) / square_millimetre; }

StarOpening star(int points, double outer_mm, double inner_mm) {
  return {.points = points,
          .outer_radius = outer_mm * millimetre,
          .inner_radius = inner_mm * millimetre};
}

/// Area and first moments from triangles to the origin, by hand here and not by the library's way.
struct Moments {
  double area = 0, x = 0, y = 0;
};
Moments moments(const Outline& polygon) {
  Moments sum;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const auto& [x0, y0] = polygon[i];
    const auto& [x1, y1] = polygon[(i + 1) % polygon.size()];
    const double triangle = (x0 * y1 - x1 * y0) / 2;
    sum.area += triangle;
    sum.x += triangle * (x0 + x1) / 3;
    sum.y += triangle * (y0 + y1) / 3;
  }
  return sum;
}

Opening any_opening() {
  const double size = 0.5 + *rc::gen::inRange(0, 1000) / 100.0;
  const int kind = *rc::gen::inRange(0, 3);
  if (kind == 0) return RoundOpening{.radius = size * millimetre};
  const int points = *rc::gen::inRange(3, 20);
  const double inner = size * *rc::gen::inRange(20, 99) / 100.0;
  if (kind == 1) return star(points, size, inner);
  OutlineOpening outline;  // a lopsided star, off the middle
  for (int i = 0; i < 2 * points; ++i) {
    const double angle = pi * i / points, radius = *rc::gen::inRange(20, 99) * size / 50;
    outline.points_mm.push_back({7 + radius * std::cos(angle), -3 + radius * std::sin(angle)});
  }
  return outline;
}

TEST_CASE("a star's opening is its triangles, valley and point in turn", "[geometry][nozzle]") {
  // Six points over two equilateral triangles that cross: inner radius R / sqrt(3), and twelve
  // small triangles of that side make sqrt(3) R^2. Eight points over two squares: inner radius
  // R cos 45 / cos 22.5 and, the squares of side R sqrt(2) less the octagon that both share,
  // 4 (2 - sqrt(2)) R^2.
  CHECK_THAT(area_mm2(star(6, 5, 5 / std::sqrt(3))), WithinRel(std::sqrt(3) * 25, 1e-14));
  const double valley = 5 * std::cos(pi / 4) / std::cos(pi / 8);
  CHECK_THAT(area_mm2(star(8, 5, valley)), WithinRel(4 * (2 - std::sqrt(2)) * 25, 1e-14));
  // Valleys at (1, 1) and the like, points at (3, 0) and the like: the square of the valleys, 2 by
  // 2, and on each side a triangle 2 wide and 2 high.
  CHECK_THAT(area_mm2(star(4, 3, std::sqrt(2))), WithinRel(4 + 4 * 2, 1e-14));
}

TEST_CASE("a round opening is a disc", "[geometry][nozzle]") {
  CHECK_THAT(area_mm2(RoundOpening{.radius = 4 * millimetre}), WithinRel(16 * pi, 1e-15));
}

TEST_CASE("an outline's opening is the same either way round", "[geometry][nozzle]") {
  // An L: 10 by 10 less a corner of 5 by 5.
  OutlineOpening corner{{{0, 0}, {10, 0}, {10, 5}, {5, 5}, {5, 10}, {0, 10}}};
  CHECK(area_mm2(corner) == 75);
  std::reverse(corner.points_mm.begin(), corner.points_mm.end());
  CHECK(area_mm2(corner) == 75);
  // Three squares of 5 by 5 with their middles at 2.5 or 7.5 along x, and along y.
  const Outline polygon = polygon_of(corner);
  const double middle = (2.5 + 7.5 + 2.5) / 3;
  for (const auto& [x, y] : {std::pair{0.0, 0.0}, {10.0, 5.0}, {5.0, 10.0}}) {
    const auto is_it = [&, x = x, y = y](const std::array<double, 2>& p) {
      return std::abs(p[0] - (x - middle)) < 1e-12 && std::abs(p[1] - (y - middle)) < 1e-12;
    };
    CHECK(std::count_if(polygon.begin(), polygon.end(), is_it) == 1);
  }
}

TEST_CASE("any opening's polygon has its area and is balanced about the middle",
          "[geometry][nozzle][law]") {
  rc::prop("area, way round and centre of area", [] {
    const Opening opening = any_opening();
    const Moments polygon = moments(polygon_of(opening, *rc::gen::inRange(3, 60)));
    RC_ASSERT(std::abs(polygon.area / area_mm2(opening) - 1) < 1e-12);
    RC_ASSERT(std::hypot(polygon.x, polygon.y) < 1e-11 * polygon.area * std::sqrt(polygon.area));
  });
}

TEST_CASE("an opening twice as wide is four times as large", "[geometry][nozzle][law]") {
  rc::prop("area grows with the square of the scale", [] {
    const Opening opening = any_opening();
    const double factor = *rc::gen::inRange(10, 500) / 100.0;
    const double wider = area_mm2(scaled(opening, factor));
    RC_ASSERT(std::abs(wider / (factor * factor * area_mm2(opening)) - 1) < 1e-12);
  });
}

TEST_CASE("any star and any lopsided outline round one middle is let pass",
          "[geometry][nozzle][law]") {
  rc::prop("no refusal", [] { check(any_opening(), here); });
}

TEST_CASE("an opening that cannot be is refused in plain words", "[geometry][nozzle][refusal]") {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  Outline many;
  for (int i = 0; i < 1001; ++i)
    many.push_back({10 * std::cos(2 * pi * i / 1001), 10 * std::sin(2 * pi * i / 1001)});
  const auto [opening, words] = GENERATE_REF(table<Opening, std::string>({
      {RoundOpening{.radius = Length()}, "has a radius of 0 mm"},
      {RoundOpening{.radius = -2 * millimetre}, "has a radius of -2 mm"},
      {RoundOpening{.radius = nan * millimetre}, "not a number"},
      {RoundOpening{.radius = 3 * metre}, "from 0.1 mm to 200 mm"},
      {star(2, 5, 3), "a star of 2 points"},
      {star(5, 5, 0), "has an inner radius of 0 mm"},
      {star(5, 5, 6), "has an inner radius of 6 mm, which is not below its outer radius of 5 mm"},
      {star(5, 5, 5), "not below"},
      {OutlineOpening{{{0, 0}, {5, 0}}}, "an outline of 2 points"},
      {OutlineOpening{many}, "an outline of 1001 points"},
      {OutlineOpening{{{0, 0}, {5, 0}, {0, nan}}}, "has a point 3 at"},
      {OutlineOpening{{{0, 0}, {5, 0}, {500, 5}}}, "has a point 3 at (500, 5) mm"},
      {OutlineOpening{{{0, 0}, {5, 5}, {5, 0}, {0, 5}}},
       "the side from point 1 and that from point 3"},
      // Closed twice over, a side along another, a corner on a side, a spike.
      {OutlineOpening{{{0, 0}, {5, 0}, {5, 5}, {0, 0}}}, "crosses or touches itself"},
      {OutlineOpening{{{0, 0}, {9, 0}, {9, 5}, {6, 5}, {6, 0}, {3, 0}, {3, 5}, {0, 5}}}, "touches"},
      {OutlineOpening{{{0, 0}, {9, 0}, {9, 5}, {4, 0}, {0, 5}}}, "crosses or touches itself"},
      {OutlineOpening{{{0, 0}, {9, 0}, {4, 0}, {4, 5}}}, "crosses or touches itself"},
      {OutlineOpening{{{0, 0}, {5, 0}, {10, 0}}}, "crosses or touches itself"},
      {OutlineOpening{{{0, 0}, {0.05, 0}, {0, 0.05}}}, "next to nothing"},
  }));
  try {
    check(opening, here);
    FAIL("let pass: " << words);
  } catch (const UserError& error) {
    CHECK_THAT(std::string(error.what()), Contains(words));
    CHECK(error.parts().field == "/pipe/nozzle");
    CHECK_FALSE(error.parts().remedy.empty());
  }
}

}  // namespace
}  // namespace brimwright::geometry
