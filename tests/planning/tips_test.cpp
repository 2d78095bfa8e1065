#include "planning/tips.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

Tip tip_from(const std::string& json) { return read_tip(Fields::parse(json, "my.tips.json")); }

}  // namespace

TEST_CASE("every shipped tip has an opening and a name of its own", "[planning]") {
  REQUIRE(shipped_tips().size() >= 10);
  for (const auto& tip : shipped_tips()) {
    INFO(tip.name);
    CHECK(geometry::area_of(tip.opening) > 5 * square_millimetre);
    CHECK(geometry::area_of(tip.opening) < 400 * square_millimetre);
    CHECK_FALSE(tip.hand);  // nobody's hand ships
  }
}

TEST_CASE("a tip is a circle, a star or an outline", "[planning]") {
  const Tip star = tip_from(R"({"name": "mine", "star":
      {"points": 8, "outer_radius": "8 mm", "inner_radius": "5 mm"}, "hand": {"correction": 1.08, "trials": 5}})");
  // A star of n points is 2n triangles with two sides R and r and the angle pi / n between them:
  // 8 x 8 x 5 x sin 22.5 degrees = 122.459 mm2.
  CHECK_THAT(geometry::area_of(star.opening) / square_millimetre, WithinAbs(122.459, 1e-3));
  REQUIRE(star.hand);
  CHECK(star.hand->trials == 5);
  const Tip slit = tip_from(R"({"name": "slit", "outline": [ {"x": "-5 mm", "y": "-1 mm"},
      {"x": "5 mm", "y": "-1 mm"}, {"x": "5 mm", "y": "1 mm"}, {"x": "-5 mm", "y": "1 mm"}]})");
  CHECK_THAT(geometry::area_of(slit.opening) / square_millimetre, WithinAbs(20, 1e-9));
}

TEST_CASE("a tip that is none is refused in a maker's words", "[planning]") {
  CHECK_THROWS_WITH(tip_from(R"({"name": "x"})"), Contains("has no opening"));
  CHECK_THROWS_WITH(tip_from(R"({"name": "x", "round": {"radius": "0 mm"}})"),
                    Contains("/round/radius: is zero"));
  CHECK_THROWS_WITH(tip_from(R"({"name": "x", "star":
      {"points": 8, "outer_radius": "5 mm", "inner_radius": "8 mm"}})"),
                    Contains("inner"));
  CHECK_THROWS_WITH(
      tip_from(R"({"name": "x", "round": {"radius": "4 mm"}, "hand": {"correction": 9}})"),
      Contains("/hand/correction: is not between"));
}
