#include "chemistry/fat_cautions.h"
#include "chemistry/formula_file.h"
#include "chemistry/proportions.h"
#include "chemistry/rate_cautions.h"
#include "chemistry/user_fats.h"
#include "units/fields.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

// Beeswax and lanolin: titrated in boiling alcohol they take 75 to 110 mg KOH/g, in lye they may
// take no more than their free acids, 4 and 0 mg/g (data/fats.json, with sources).

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;

/// Olive at 190 mg/g with `share` of `wax`, superfat 5 %.
std::string formula_with_wax(const std::string& wax, const std::string& olive,
                             const std::string& share, const std::string& more = "") {
  return R"({ "schema": "brimwright.formula/2", "name": "Bar", "own_fats": "studio.fats.json",
    "fats": [ { "fat": "olive", "share": ")" +
         olive + R"(", "saponification_value": 190 }, { "fat": ")" + wax + R"(", "share": ")" +
         share + "\"" + more + R"( } ], "superfat": "5 %",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %",
                  "purity_range": ["98 %", "100 %"] } ],
    "water": { "lye_strength": "33 %" }, "pour_temperature": "70 °C" })";
}

Formula read_with(const std::string& text, const FatTable& table = shipped_table()) {
  return read_formula(Fields::parse(text, "bar.formula.json"), table);
}

std::vector<Remark> cautions_of(const Formula& formula) {
  return slow_wax_cautions(formula, proportions(formula));
}

TEST_CASE("a little beeswax is told with the superfat that it may leave", "[chemistry]") {
  // 0.95 x 190 + 0.05 x 57 = 183.35 mg/g planned, 0.95 x 190 + 0.05 x 4 = 180.7 sure:
  // 1 - 0.95 x 183.35 / 180.7 = 3.607 %.
  const auto cautions = cautions_of(read_with(formula_with_wax("beeswax", "95 %", "5 %")));
  REQUIRE(cautions.size() == 1);
  CHECK(cautions[0].severity == Severity::caution);
  CHECK_THAT(cautions[0].text, Contains("Bar: Beeswax is a wax that lye attacks slowly") &&
                                   Contains("57 mg/g") && Contains("4 mg/g") &&
                                   Contains("the superfat is 3.6 %"));
}

TEST_CASE("so much wax that lye may be left over is a danger", "[chemistry]") {
  // A lot's 95 mg/g: 0.8 x 190 + 0.2 x 95 = 171 planned, 152 + 0.8 = 152.8 sure:
  // 1 - 0.95 x 171 / 152.8 = -6.32 %.
  const Formula formula =
      read_with(formula_with_wax("beeswax", "80 %", "20 %", R"(, "saponification_value": 95)"));
  const auto cautions = cautions_of(formula);
  REQUIRE(cautions.size() == 1);
  CHECK(cautions[0].severity == Severity::danger);
  CHECK_THAT(cautions[0].text,
             Contains("LYE-HEAVY IS POSSIBLE in Bar") && Contains("the superfat is -6.4 %"));
  // Among the doubts that every plan prints.
  const auto doubts = data_doubts(formula, proportions(formula));
  REQUIRE_FALSE(doubts.empty());
  CHECK(std::count_if(doubts.begin(), doubts.end(),
                      [](const Remark& doubt) { return doubt.severity == Severity::danger; }) == 1);
}

TEST_CASE("no analysis makes a slow wax sure to react", "[chemistry]") {
  const Formula formula =
      read_with(formula_with_wax("beeswax", "95 %", "5 %", R"(, "saponification_value": 95)"));
  CHECK(formula.fats[1].saponification.typical.mg_koh_per_g() == 95);
  CHECK(formula.fats[1].saponification.low.mg_koh_per_g() == 4);
}

TEST_CASE("a soap of wax is refused", "[chemistry]") {
  // 0.2 x 190 + 0.8 x 53 = 80.4 mg/g planned, 38 sure: less than half.
  try {
    (void)read_with(formula_with_wax("lanolin", "20 %", "80 %"));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == "/fats");
    CHECK_THAT(std::string(error.what()),
               Contains("more than half of the alkali would be weighed for Lanolin (wool wax)"));
  }
}

TEST_CASE("a wax's NaOH value is known for one", "[chemistry]") {
  // 95 and 97 mg KOH/g x 0.71289 are 67.7 and 69.2 mg NaOH/g.
  for (const auto* value : {"67.7", "69.2"})
    for (const auto* wax : {"beeswax", "lanolin"})
      CHECK_THROWS_WITH(
          read_with(formula_with_wax(wax, "95 %", "5 %",
                                     std::string(R"(, "saponification_value": )") + value)),
          Contains("looks like a NaOH value"));
}

TEST_CASE("a maker's own beeswax is as slow as any", "[chemistry]") {
  const FatTable table(read_user_fats(Fields::parse(
      R"({ "schema": "brimwright.fats/1", "fats": [ { "id": "wax_studio", "name": "Yellow beeswax",
          "kind": "wax_ester", "inci": "Cera Alba", "inci_sodium_soap": "Sodium Beeswax",
          "saponification_value": 95, "source": "a delivery note" } ] })",
      "studio.fats.json")));
  const Formula formula = read_with(formula_with_wax("wax_studio", "95 %", "5 %"), table);
  CHECK(formula.fats[1].saponification.typical.mg_koh_per_g() == 95);
  CHECK(formula.fats[1].saponification.low.mg_koh_per_g() == 4);
  CHECK(cautions_of(formula).size() == 1);
}

TEST_CASE("a formula without such waxes hears nothing of them", "[chemistry]") {
  CHECK(cautions_of(read_with(formula_with_wax("jojoba", "95 %", "5 %"))).empty());
}

}  // namespace
}  // namespace brimwright::chemistry
