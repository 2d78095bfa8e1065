#include "moulds/outline.h"

#include <catch2/catch.hpp>

#include <cmath>

namespace brimwright::moulds {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

std::vector<std::pair<Length, Length>> corners(const Outline& points_mm) {
  std::vector<std::pair<Length, Length>> points;
  for (const auto& [x, y] : points_mm) points.emplace_back(x * millimetre, y * millimetre);
  return points;
}

double greatest(const Outline& points_mm) {
  return greatest_inset(outline_of(corners(points_mm))) / millimetre;
}

double area_of(const Outline& outline, const std::vector<std::array<std::uint32_t, 3>>& triangles) {
  double area = 0;
  for (const auto& [a, b, c] : triangles) {
    const auto& [ax, ay] = outline[a];
    const auto& [bx, by] = outline[b];
    const auto& [cx, cy] = outline[c];
    area += ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)) / 2;
  }
  return area;
}

}  // namespace

TEST_CASE("an outline may be walked either way round", "[moulds][outline]") {
  const Outline square = {{0, 0}, {10, 0}, {10, 10}, {0, 10}};
  Outline backwards = {{0, 10}, {10, 10}, {10, 0}, {0, 0}};
  CHECK(inset_area(outline_of(corners(backwards))).area / square_millimetre == 100);
  CHECK(inset_area(outline_of(corners(square))).area / square_millimetre == 100);
}

TEST_CASE("a triangle's inset is a smaller triangle of the same angles", "[moulds][outline]") {
  // Sides 3, 4, 5: inscribed circle of radius (3 + 4 - 5) / 2 = 1; inset by d it shrinks to 1 - d.
  const Outline triangle = {{0, 0}, {40, 0}, {0, 30}};
  const InsetArea area = inset_area(triangle);
  CHECK_THAT(area.at(4 * millimetre) / square_millimetre, WithinRel(600 * 0.36, 1e-12));
  CHECK_THAT(greatest(triangle), WithinRel(10.0, 1e-12));
  const Outline smaller = inset(triangle, 4 * millimetre);
  CHECK_THAT(smaller[0][0], WithinRel(4.0, 1e-12));
  CHECK_THAT(smaller[0][1], WithinRel(4.0, 1e-12));
  CHECK_THAT(smaller[1][0] - smaller[0][0], WithinRel(40 * 0.6, 1e-12));
}

TEST_CASE("an outline can lean in only until two walls meet", "[moulds][outline]") {
  struct Row {
    const char* what;
    Outline outline;
    double greatest_mm;
  };
  // Geometry on paper.
  const auto row = GENERATE(values<Row>({
      {"a rectangle: half its width", {{0, 0}, {80, 0}, {80, 50}, {0, 50}}, 25},
      {"an L: half an arm's width", {{0, 0}, {60, 0}, {60, 20}, {20, 20}, {20, 50}, {0, 50}}, 10},
      {"a bow tie: half its waist of 6, long before an edge runs out",
       {{0, 0}, {50, 27}, {100, 0}, {100, 60}, {50, 33}, {0, 60}},
       // Each waist corner moves straight up or down by 1 / cos(slope) a millimetre.
       3 * std::cos(std::atan(27.0 / 50))},
      {"a notch of 1 mm that ends 5 mm from the far wall",
       {{0, 0}, {60, 0}, {60, 30}, {30.5, 30}, {30.5, 5}, {29.5, 5}, {29.5, 30}, {0, 30}},
       2.5},
  }));
  CAPTURE(row.what);
  CHECK_THAT(greatest(row.outline), WithinRel(row.greatest_mm, 1e-9));
}

TEST_CASE("an outline that does not bound one cavity is named as such", "[moulds][outline]") {
  struct Row {
    Outline outline;
    const char* flaw;
    std::size_t point;
  };
  const auto row = GENERATE(values<Row>({
      {{{0, 0}, {10, 10}, {10, 0}, {0, 10}},
       "the edge from point 1 to 2 meets the edge from point 3 to 4",
       0},
      {{{0, 0}, {10, 0}, {10, 0}, {0, 10}}, "points 2 and 3 are the same", 1},
      {{{0, 0}, {10, 0}, {10, 10}, {0, 0}}, "points 4 and 1 are the same", 3},
      {{{0, 0}, {10, 0}, {5, 0}, {5, 5}}, "the outline folds back on itself at point 2", 1},
      {{{0, 0}, {20, 0}, {20, 10}, {10, 0}, {0, 10}},
       "the edge from point 1 to 2 meets the edge from point 3 to 4",
       0},
  }));
  const auto flaw = flaw_of(corners(row.outline));
  REQUIRE(flaw);
  CHECK(flaw->words == row.flaw);
  CHECK(flaw->point == row.point);
}

TEST_CASE("a sound outline has no flaw, straight corners included", "[moulds][outline]") {
  CHECK_FALSE(flaw_of(corners({{0, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}})));
}

TEST_CASE("cutting ears fills an outline once and leaves nothing over", "[moulds][outline]") {
  // A comb of teeth, straight corners on its back: n - 2 triangles, none turned over, whose areas
  // add to the shoelace formula's.
  Outline comb;
  for (int i = 0; i <= 10; ++i) comb.push_back({i * 10.0, 0});
  for (int i = 10; i > 0; --i) {
    comb.push_back({i * 10.0, 30});
    comb.push_back({i * 10.0 - 5, 5});
  }
  comb.push_back({0, 30});
  const auto triangles = filled(comb);
  CHECK(triangles.size() == comb.size() - 2);
  for (const auto& triangle : triangles) CHECK(area_of(comb, {triangle}) > 0);
  // Shoelace on paper: 100 x 30 less ten notches of 10 x 25 / 2.
  CHECK_THAT(area_of(comb, triangles), WithinAbs(3000 - 10 * 125, 1e-9));
}

}  // namespace brimwright::moulds
