// Which hollows are alike, and which of them stands for the others.
#include "moulds/hollow_groups.h"

#include "moulds/shape_curve.h"

#include <catch2/catch.hpp>

#include <vector>

namespace brimwright::moulds {
namespace {

Hollow hollow_of(Length height) {
  return {.curve = level_curve(Block{50 * millimetre, 50 * millimetre, height, {}, {}}),
          .floor_mm = 0,
          .brim_mm = height / millimetre,
          .middle_mm = {0, 0},
          .opening = {},
          .trapped_air = {},
          .spills_at_mm = {},
          .wall = {}};
}

std::vector<Hollow> hollows_of(const std::vector<double>& heights_mm) {
  std::vector<Hollow> hollows;
  for (const double height : heights_mm) hollows.push_back(hollow_of(height * millimetre));
  return hollows;
}

}  // namespace

TEST_CASE("of hollows equal but for rounding the first stands for all", "[moulds]") {
  const double a_bit = GENERATE(0.0, 1e-14, -1e-14, 1e-9, -1e-9);
  CAPTURE(a_bit);
  const auto groups = groups_of(hollows_of({30, 30 * (1 + a_bit), 30 * (1 - a_bit), 30}));
  REQUIRE(groups.size() == 1);
  CHECK(groups[0].typical == 0);
}

TEST_CASE("a hollow larger by more than rounding is not taken for the middle one", "[moulds]") {
  // 30.00, 30.03 and 30.06: alike for people, and the middle one is plain.
  const auto groups = groups_of(hollows_of({30.06, 30, 30.03}));
  REQUIRE(groups.size() == 1);
  CHECK(groups[0].typical == 2);
  // Two of the middle volume: the first of these two.
  CHECK(groups_of(hollows_of({30.06, 30.03, 30, 30.03 * (1 - 1e-12)}))[0].typical == 1);
}

}  // namespace brimwright::moulds
