#include "runs/decoration_reading.h"

#include "shipped_run.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <variant>

using namespace brimwright;
using namespace brimwright::planning;
using namespace brimwright::runs::test;
using Catch::Matchers::Contains;

namespace {

const std::string buried_find =
    R"({ "arrange": "level", "placed": "before the pour", "cover": "3 mm" })";

}  // namespace

TEST_CASE("a decoration is read with where it goes and what it takes", "[runs]") {
  const Decoration bead = read(shipped_run()).decorations.at(0);
  CHECK(bead.name == "Pearl bead");
  CHECK(std::get<InMould>(bead.made).form == CastForm::two_halves);
  CHECK(std::get<BelowBrim>(std::get<InMould>(bead.made).fill).headspace == Length{});
  CHECK(std::get<OnTop>(bead.where).pressed_in == 3 * millimetre);
  CHECK(bead.per_cast == 1);
  CHECK(bead.density == 1.03 * gram_per_millilitre);
  CHECK(bead.spares == 8 * percent);
  CHECK(bead.left_in_jug == 6 * gram);
  CHECK(bead.time_per_tray_fill == std::chrono::minutes(5));
  CHECK(bead.label.inci.size() == 5);
}

TEST_CASE("a buried decoration has places, or asks for them", "[runs]") {
  Json run = with("/decorations/0/buried", buried_find);
  run["decorations"][0].erase("on_top");
  const auto asks = std::get<Buried>(read(run).decorations.at(0).where);
  CHECK(std::get<FindPlaces>(asks.places).lying == geometry::Lying::level);
  CHECK(asks.cover == 3 * millimetre);
  CHECK_FALSE(asks.pressed_in);
  run["decorations"][0]["buried"] = Json::parse(R"({ "placed": "pressed in after", "cover": "2 mm",
      "places": [ { "x": "-4 mm", "y": "0 mm", "height": "8 mm", "turn": { "z": "90 deg" } } ] })");
  const auto placed = std::get<Buried>(read(run).decorations.at(0).where);
  const auto& places = std::get<std::vector<BuriedAt>>(placed.places);
  REQUIRE(places.size() == 1);
  CHECK(places[0].x == -4 * millimetre);
  CHECK(places[0].turned.z.degrees() == Approx(90));
  CHECK(placed.pressed_in);
}

TEST_CASE("what is wrong with a decoration is refused where it stands", "[runs]") {
  const auto slip = GENERATE(values<Slip>({
      {"/decorations/0/material", R"("sodium hydroxide")", "/decorations/0/material",
       "sodium hydroxide"},
      {"/decorations/0/mould", "", "/decorations/0", "does not say what it is made in"},
      {"/decorations/0/rod", R"({ "diameter": "8 mm", "length": "30 mm" })", "/decorations/0",
       "more than one way"},
      {"/decorations/0/cast_as", R"("three parts")", "/decorations/0/cast_as", "three parts"},
      {"/decorations/0/fill", R"({ "depth": "90 mm" })", "/decorations/0/fill",
       "deeper than the cavity"},
      {"/decorations/0/per_piece", "", "/decorations/0", "gives no number"},
      {"/decorations/0/per_cast", "2", "/decorations/0", "gives its number twice"},
      {"/decorations/0/per_piece", "0", "/decorations/0/per_piece", "0"},
      {"/decorations/0/density", R"("1.03")", "/decorations/0/density", "unit"},
      {"/decorations/0/melt_loss", R"("80 %")", "/decorations/0/melt_loss", "80 %"},
      {"/decorations/0/buried", buried_find, "/decorations/0", "both on top and buried"},
      {"/decorations/0/on_top/pressed_in", "", "/decorations/0/on_top/pressed_in", "is missing"},
      {"/decorations/0/on_top/sink", R"("3 mm")", "/decorations/0/on_top/sink", "unknown key"},
      {"/decorations/0/weight", R"("3 g")", "/decorations/0/weight", "unknown key"},
      {"/dust/0/per_piece", R"("0.1 g")", "/dust/0", "gives its amount twice"},
      {"/dust/0/on_covered_surface", "", "/dust/0", "gives no amount"},
      {"/dust/0/share_that_sticks", "", "/dust/0/share_that_sticks", "is missing"},
      {"/dust/0/name", R"("potash lye")", "/dust/0/name", "potash lye"},
  }));
  CAPTURE(slip.at, slip.value);
  const auto complaint = complaint_of(slip);
  CHECK(complaint.field == slip.field);
  CHECK_THAT(complaint.problem + "; " + complaint.remedy, Contains(slip.says));
}

TEST_CASE("a buried decoration names places or asks for them, never both", "[runs]") {
  Json run = shipped_run();
  run["decorations"][0].erase("on_top");
  const auto refusal = [&](const std::string& buried) -> std::string {
    run["decorations"][0]["buried"] = Json::parse(buried);
    try {
      read(run);
    } catch (const UserError& error) {
      return error.what();
    }
    return "";
  };
  CHECK_THAT(refusal(R"({ "placed": "before the pour", "cover": "3 mm" })"),
             Contains("/decorations/0/buried: has no places"));
  CHECK_THAT(refusal(R"({ "placed": "before the pour", "cover": "3 mm", "arrange": "free",
                          "places": [] })"),
             Contains("/decorations/0/buried: names places and asks for them too"));
  CHECK_THAT(refusal(R"({ "placed": "later", "cover": "3 mm", "arrange": "free" })"),
             Contains("/decorations/0/buried/placed"));
}
