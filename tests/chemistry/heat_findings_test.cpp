#include "chemistry/heat_findings.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;

HeatQuestion read(const std::string& bench) {
  return read_heat_question(Fields::parse(bench, "test.run.json"));
}

LyeCharge thirty_three_percent() {
  return {{{Alkali::sodium_hydroxide, 100 * gram}}, 200 * gram, Mass(), Mass()};
}

HeatFindings findings(const std::string& bench) {
  return heat_findings(read(bench), "Base", thirty_three_percent(), 200 * gram,
                       {700 * gram, {}, {}});
}

bool is_said(const HeatFindings& found, const std::string& part) {
  const auto holds = [&](const Remark& r) { return r.text.find(part) != std::string::npos; };
  return std::any_of(found.remarks.begin(), found.remarks.end(), holds) ||
         std::any_of(found.pour_remarks.begin(), found.pour_remarks.end(), holds);
}

TEST_CASE("with nothing said, only the peak is told, and that 20 degC is assumed", "[chemistry]") {
  const HeatFindings found = findings("{}");
  CHECK(found.assumed);
  CHECK(is_said(found, "(20 °C assumed)"));
  CHECK(is_said(found, "A high estimate"));
  CHECK(found.cooling.empty());
  CHECK_FALSE(found.at_pour);
  CHECK(found.remarks.size() == 1);
}

TEST_CASE("the bench's temperatures are reckoned with", "[chemistry]") {
  const HeatFindings found = findings(
      R"({ "room_at": "22 °C", "water_at": "5 °C", "ice_share": "50 %", "lye_used_at": "38 °C",
           "fats_at": "100 °F" })");
  CHECK_FALSE(found.assumed);
  CHECK(found.peak.peak < findings("{}").peak.peak);
  CHECK(found.cooling.size() == 2);  // the ice bath and the room
  REQUIRE(found.at_pour);
  CHECK(found.at_pour->celsius() == Approx(37.9).margin(0.2));  // 38 and 37.8 degC
  CHECK(is_said(found, " min in an ice bath"));
  // Air takes heat at a tenth of water's rate: from the peak to 15 degC is hours.
  CHECK(is_said(findings(R"({ "lye_used_at": "15 °C" })"), " h in a fridge without food"));
}

TEST_CASE("hot lye was sent into the fridge", "[chemistry]") {
  // Air of a fridge and of a room takes heat alike; the room is 16 K warmer, so there it is slower.
  const HeatFindings chilled = findings(R"({ "lye_used_at": "15 °C", "cooled_in": "fridge" })");
  CHECK(is_said(chilled, "Put it into the fridge only once it has cooled in the room"));
  const HeatFindings to_the_room = findings(R"({ "lye_used_at": "25 °C", "cooled_in": "room" })");
  REQUIRE(chilled.cooling.size() == 1);
  CHECK(chilled.cooling[0].shortest > to_the_room.cooling.at(0).shortest);
  CHECK(chilled.cooling[0].longest > to_the_room.cooling.at(0).longest);
  // Used at 38 degC, it is never cold enough for one.
  for (const auto* bench :
       {R"({ "lye_used_at": "38 °C", "cooled_in": "fridge" })", R"({ "lye_used_at": "38 °C" })"}) {
    const HeatFindings warm = findings(bench);
    CHECK(warm.cooling.back().where == Surroundings::room);
    CHECK_FALSE(is_said(warm, "fridge"));
  }
}

TEST_CASE("a lye of both alkalis is told what mends both", "[chemistry]") {
  const LyeCharge both = {
      {{Alkali::potassium_hydroxide, 50 * gram}, {Alkali::sodium_hydroxide, 50 * gram}},
      100 * gram,
      Mass(),
      Mass()};
  const auto at = [&](const std::string& used_at) {
    return heat_findings(read(R"({ "lye_used_at": ")" + used_at + R"(" })"), "Soft", both,
                         100 * gram, {});
  };
  // 50 %: NaOH from 14 degC, KOH from 4 degC on (data/lye.json), each 5 K earlier.
  CHECK(is_said(at("6 °C"), "50 % NaOH may crystallise"));
  CHECK(is_said(at("6 °C"), "use it at 20 °C (68 °F) or warmer"));
  CHECK_FALSE(is_said(at("20 °C"), "crystallise"));
}

TEST_CASE("a chilled topping is held against its limit", "[chemistry]") {
  CHECK(is_said(
      findings(R"({ "lye_used_at": "15 °C", "fats_at": "10 °C", "batter_below": "18 °C" })"),
      "below the limit"));
  const HeatFindings warm =
      findings(R"({ "lye_used_at": "40 °C", "fats_at": "15 °C", "batter_below": "18 °C" })");
  CHECK(is_said(warm, "not below the limit"));
  CHECK(warm.pour_remarks.back().severity == Severity::caution);
}

TEST_CASE("lye kept where it may crystallise is warned of", "[chemistry]") {
  CHECK(is_said(findings(R"({ "lye_used_at": "5 °C" })"), "may crystallise"));
  CHECK_FALSE(is_said(findings(R"({ "lye_used_at": "30 °C" })"), "may crystallise"));
}

TEST_CASE("KOH's peak is said to be above the real one", "[chemistry]") {
  const LyeCharge koh = {{{Alkali::potassium_hydroxide, 100 * gram}}, 200 * gram, Mass(), Mass()};
  const HeatFindings found = heat_findings({}, "Soft", koh, 200 * gram, {});
  CHECK(is_said(found, "the real lye solution stays cooler"));
  CHECK(found.remarks.front().severity == Severity::danger);
}

TEST_CASE("a bench that cannot be is refused in one line", "[chemistry]") {
  const auto [bench, says] = GENERATE(table<std::string, std::string>({
      {R"({ "water_at": "-5 °C" })", "/water_at"},
      {R"({ "water_at": "120 °C" })", "/water_at"},
      {R"({ "ice_share": "120 %" })", "/ice_share"},
      {R"({ "batter_below": "18 °C", "lye_used_at": "20 °C" })", "/fats_at: is missing"},
      {R"({ "batter_below": "18 °C", "fats_at": "20 °C" })", "/lye_used_at: is missing"},
      {R"({ "lye_used_at": "2 °C", "cooled_in": "fridge" })", "does not reach"},
      {R"({ "cooled_in": "snow" })", "/cooled_in"},
      {R"({ "watter_at": "20 °C" })", "did you mean \"water_at\"?"},
  }));
  CAPTURE(bench);
  CHECK_THROWS_WITH(read(bench), Contains(says));
}

}  // namespace
}  // namespace brimwright::chemistry
