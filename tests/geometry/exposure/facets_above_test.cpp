#include "geometry/exposure/facets_above.h"

#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <vector>

namespace brimwright::geometry {
namespace {

std::vector<FacetCorners> facets_of(const TriangleMesh& mesh) {
  std::vector<FacetCorners> facets;
  for (const auto& [a, b, c] : mesh.triangles)
    facets.push_back({mesh.vertices_mm[a], mesh.vertices_mm[b], mesh.vertices_mm[c]});
  return facets;
}
/// What is over one point among others, so that their squares are laid in many ways.
Above over(const Vector& point, const std::vector<FacetCorners>& facets,
           std::vector<Vector> others = {}) {
  others.push_back(point);
  return facets_above(others, facets).back();
}

TEST_CASE("a plumb line through corners and edges counts each surface once",
          "[geometry][exposed]") {
  // Two pyramids foot to foot, and a box whose lid is cut from corner to corner: points below the
  // tip, below edges and below the cut, all of whole numbers, so that the lines hit them exactly.
  const auto tent = facets_of(test::together(test::turned({{0, -8}, {4, 0}, {0, 8}}, 4),
                                             test::box({10, 0, 0}, {14, 4, 4})));
  for (const double x : {0.0, 1.0, 2.0, -1.0}) {
    CHECK(over({x, 0, 0}, tent).winding == 1);
    CHECK(over({0, x, 1}, tent).winding == 1);
    CHECK(over({0, x, -9}, tent).winding == 0);
  }
  for (const double x : {0.5, 1.0, 2.0, 3.5}) {
    CHECK(over({10 + x, x, 2}, tent).winding == 1);
    CHECK(over({10 + x, 4 - x, 2}, tent).winding == 1);
    CHECK(over({10 + x, x, -2}, tent).winding == 0);
    CHECK(over({10 + x, x, -2}, tent).any);
    CHECK_FALSE(over({10 + x, x, 4}, tent).any);
  }
}

TEST_CASE("on whole numbers, a solid winds once round what is in it", "[geometry][exposed][law]") {
  rc::prop("boxes one in another wind as often as they hold the point", [] {
    const auto whole = [](int low, int high) { return double(*rc::gen::inRange(low, high)); };
    TriangleMesh all;
    std::vector<std::array<test::Point, 2>> boxes;
    for (int i = 0; i < 4; ++i) {
      const test::Point low = {whole(0, 5), whole(0, 5), whole(0, 5)};
      boxes.push_back({low, {low[0] + whole(1, 6), low[1] + whole(1, 6), low[2] + whole(1, 6)}});
      all = test::together(all, test::box(boxes.back()[0], boxes.back()[1]));
    }
    // Off the walls' planes, but below every cut from corner to corner of a square box.
    const Vector p = {whole(0, 11) + 0.5, whole(0, 11) + 0.5, whole(0, 11) + 0.5};
    int holding = 0;
    for (const auto& [low, high] : boxes) {
      bool inside = true;
      for (std::size_t i = 0; i < 3; ++i) inside = inside && p[i] > low[i] && p[i] < high[i];
      holding += inside ? 1 : 0;
    }
    RC_ASSERT(over(p, facets_of(all)).winding == holding);
  });
}

TEST_CASE("what is over a point is the same whatever else is asked", "[geometry][exposed][law]") {
  rc::prop("alone, among others, and by every facet in turn", [] {
    const auto number = [] { return *rc::gen::inRange(-1000, 1001) / 100.0; };
    const auto point = [&] { return Vector{number(), number(), number()}; };
    const int count = *rc::gen::inRange(1, 40);
    std::vector<Vector> points;
    for (int i = 0; i < count; ++i) points.push_back(point());
    std::vector<FacetCorners> facets;
    for (int i = 0; i < 30; ++i) facets.push_back({point(), point(), point()});
    const auto all = facets_above(points, facets);
    for (std::size_t i = 0; i < points.size(); ++i) {
      Above plainly;
      for (const FacetCorners& facet : facets) {
        const Above one = over(points[i], {facet});
        plainly.winding += one.winding;
        plainly.any = plainly.any || one.any;
      }
      RC_ASSERT(all[i].winding == plainly.winding);
      RC_ASSERT(all[i].any == plainly.any);
    }
  });
}

TEST_CASE("no points and no facets are nothing to ask", "[geometry][exposed]") {
  CHECK(facets_above({}, {{Vector{0, 0, 1}, {1, 0, 1}, {0, 1, 1}}}).empty());
  CHECK_FALSE(facets_above({{0, 0, 0}}, {}).front().any);
}

}  // namespace
}  // namespace brimwright::geometry
