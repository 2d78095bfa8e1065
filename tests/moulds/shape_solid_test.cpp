// Two ways to one number: the closed form against the level curve of the shape's own solid.

#include "moulds/shape_solid.h"

#include "geometry/levels/level_curve.h"
#include "geometry/repair/mesh_checks.h"
#include "moulds/shape.h"
#include "moulds/shape_curve.h"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <map>
#include <string>

namespace brimwright::moulds {
namespace {

using Catch::Matchers::WithinRel;

constexpr Length mm = millimetre;

struct Sample {
  std::string name;
  Shape shape;
};

std::vector<Sample> samples() {
  const Angle draft = Angle::in_degrees(6);
  return {
      {"block, sharp", Block{80 * mm, 50 * mm, 30 * mm, draft, {}}},
      {"block, round corners", Block{80 * mm, 50 * mm, 30 * mm, draft, 12 * mm}},
      {"block, corners running out", Block{80 * mm, 50 * mm, 30 * mm, draft, 2 * mm}},
      {"block, round ends", Block{90 * mm, 50 * mm, 30 * mm, draft, 25 * mm}},
      {"cup", Frustum{50 * mm, 70 * mm, 30 * mm}},
      {"cone", Frustum{0 * mm, 70 * mm, 30 * mm}},
      {"fluted cup", FlutedCup{44 * mm, 66 * mm, 36 * mm, 8, 4.62 * mm}},
      {"six-sided bar", RegularPolygon{6, 68 * mm, 27 * mm, draft}},
      {"outline", FreeOutline{{{0 * mm, 0 * mm},
                               {60 * mm, 0 * mm},
                               {70 * mm, 30 * mm},
                               {30 * mm, 20 * mm},
                               {10 * mm, 50 * mm}},
                              20 * mm,
                              draft}},
      {"profile", TurnedProfile{{{0 * mm, 0 * mm},
                                 {20 * mm, 2 * mm},
                                 {20 * mm, 8 * mm},
                                 {30 * mm, 8 * mm},
                                 {36 * mm, 30 * mm}}}},
      {"dome", Dome{82 * mm, 33 * mm}},
      {"ball", Ball{22 * mm}},
      {"half ball", HalfBall{16 * mm}},
      {"half ring", HalfTorus{52 * mm, 24 * mm}},
      {"ring", TurnedRing{70 * mm, 78 * mm, 26 * mm, 22 * mm, 32 * mm}},
      {"heart", Heart{42 * mm, 22 * mm, draft}},
      {"upright heart", Heart{42 * mm, 22 * mm, {}}},
  };
}

bool has_straight_edges_only(const std::string& name) {
  return name == "block, sharp" || name == "six-sided bar" || name == "outline";
}

}  // namespace

TEST_CASE("solids with straight edges hold exactly what the formula says at every level",
          "[moulds]") {
  for (const auto& [name, shape] : samples()) {
    if (!has_straight_edges_only(name)) continue;
    CAPTURE(name);
    const auto formula = level_curve(shape);
    const auto mesh = geometry::LevelCurve::of_solid(solid_of(shape, 64));
    for (const double up : {0.1, 0.37, 0.5, 0.81, 1.0}) {
      const Length depth = up * formula.height();
      CHECK_THAT(mesh.volume_below(depth) / millilitre,
                 WithinRel(formula.volume_below(depth) / millilitre, 1e-11));
      CHECK_THAT(mesh.free_surface(depth) / square_millimetre,
                 WithinRel(formula.free_surface(depth) / square_millimetre, 1e-9));
    }
  }
}

TEST_CASE("round solids come to the formula as the facets grow finer", "[moulds]") {
  // A chord's error goes with 1 / n^2, so (4 V(2n) - V(n)) / 3 (Richardson) leaves 1 / n^4: at n =
  // 256 some 1e-7, but where a level cuts near a bowl's bottom the polygons of one level are no
  // longer alike and 3e-5 remains.
  for (const auto& [name, shape] : samples()) {
    CAPTURE(name);
    const auto formula = level_curve(shape);
    const auto coarse = geometry::LevelCurve::of_solid(solid_of(shape, 256));
    const auto fine = geometry::LevelCurve::of_solid(solid_of(shape, 512));
    for (const double up : {0.25, 0.5, 0.75, 1.0}) {
      const Length depth = up * formula.height();
      const Volume limit = (4 * fine.volume_below(depth) - coarse.volume_below(depth)) / 3;
      CHECK_THAT(limit / millilitre,
                 WithinRel(formula.volume_below(depth) / millilitre, up == 1.0 ? 1e-6 : 3e-5));
    }
  }
}

TEST_CASE("a round cup of n facets holds (n / 2 pi) sin(2 pi / n) of the true one", "[moulds]") {
  // Area of the inscribed n-gon: CRC Standard Mathematical Tables, regular polygons.
  const Frustum cup{50 * mm, 70 * mm, 30 * mm};
  for (const int n : {8, 24, 100}) {
    const auto mesh = geometry::LevelCurve::of_solid(solid_of(cup, n));
    const double share = n / (2 * pi) * std::sin(2 * pi / n);
    CHECK_THAT(mesh.brimful() / level_curve(cup).brimful(), WithinRel(share, 1e-12));
    CHECK_THAT(mesh.volume_below(7 * mm) / level_curve(cup).volume_below(7 * mm),
               WithinRel(share, 1e-11));
  }
}

TEST_CASE("every shape's solid passes the checks made on a maker's own mesh", "[moulds]") {
  for (const auto& [name, shape] : samples()) {
    CAPTURE(name);
    for (const int facets : {8, 48}) {
      const auto checked = geometry::checked_solid(solid_of(shape, facets), name);
      CHECK(checked.remarks.empty());
    }
  }
}

}  // namespace brimwright::moulds
