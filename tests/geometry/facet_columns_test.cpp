#include "geometry/facet_columns.h"

#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <vector>

namespace brimwright::geometry {
namespace {

FacetColumns columns_of(const TriangleMesh& mesh) {
  std::vector<FacetColumns::Facet> facets;
  for (const auto& [a, b, c] : mesh.triangles)
    facets.push_back({mesh.vertices_mm[a], mesh.vertices_mm[b], mesh.vertices_mm[c]});
  return FacetColumns(std::move(facets));
}

TEST_CASE("a plumb line through corners and edges counts each surface once",
          "[geometry][exposed]") {
  // Two pyramids foot to foot, and a box whose lid is cut from corner to corner: points below the
  // tip, below edges and below the cut, all of whole numbers, so that the lines hit them exactly.
  const FacetColumns tent = columns_of(test::together(test::turned({{0, -8}, {4, 0}, {0, 8}}, 4),
                                                      test::box({10, 0, 0}, {14, 4, 4})));
  for (const double x : {0.0, 1.0, 2.0, -1.0}) {
    CHECK(tent.above({x, 0, 0}).winding == 1);
    CHECK(tent.above({0, x, 1}).winding == 1);
    CHECK(tent.above({0, x, -9}).winding == 0);
  }
  for (const double x : {0.5, 1.0, 2.0, 3.5}) {
    CHECK(tent.above({10 + x, x, 2}).winding == 1);
    CHECK(tent.above({10 + x, 4 - x, 2}).winding == 1);
    CHECK(tent.above({10 + x, x, -2}).winding == 0);
    CHECK(tent.above({10 + x, x, -2}).any);
    CHECK_FALSE(tent.above({10 + x, x, 4}).any);
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
    RC_ASSERT(columns_of(all).above(p).winding == holding);
  });
}

}  // namespace
}  // namespace brimwright::geometry
