#include "reports/catalogue_report.h"

#include "chemistry/fats.h"
#include "reports/text_table.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>
#include <string>

namespace brimwright::reports {
namespace {

using Catch::Matchers::Contains;

std::string in_full(const std::string& id) {
  const chemistry::Fat* fat = chemistry::find_fat(id);
  REQUIRE(fat != nullptr);
  return catalogue_text({{}, {*fat}}, true);
}

/// With every run of blanks and line breaks as one blank.
std::string unwrapped(const std::string& text) {
  std::istringstream words(text);
  std::string all, word;
  while (words >> word) all += (all.empty() ? "" : " ") + word;
  return all;
}

TEST_CASE("no fat's listing is wider than the page", "[reports]") {
  for (const auto& fat : chemistry::shipped_fats()) {
    std::istringstream lines(in_full(fat.id));
    for (std::string line; std::getline(lines, line);) {
      CAPTURE(fat.id, line);
      CHECK(shown_width(line) <= page_width);
    }
  }
}

TEST_CASE("a fat's listing tells all that is known and where it is from", "[reports]") {
  // Figures of CXS 210-1999, Tables 1 and 2, read in a trade reprint; 242.9 to 262.6 from chain
  // lengths (its corner make-ups), 1.5 % unsaponifiable.
  const std::string text = unwrapped(in_full("coconut"));
  for (const auto* part :
       {"246.6 to 265, used: 255.8", "248 to 265 mg KOH/g, CXS 210-1999", "6.3 to 10.6",
        "250 or more (India, Food Safety", "Value used: the middle of all that was checked",
        "Cocos Nucifera Oil *", "Sodium Cocoate", "Potassium Cocoate", "C12:0 lauric 45.1 to 53.2",
        "0.906 to 0.919", "0.00064 g/ml lighter for each kelvin warmer",
        "its fatty acids call for 246.6 to 262.6 mg KOH/g",
        "from 242.9 on with 1.5 % unsaponifiable", "The value above agrees", "CXS 210-1999",
        "read in the source"})
    CHECK_THAT(text, Contains(part));
}

TEST_CASE("what was only remembered is marked in a fat's listing", "[reports]") {
  const std::string olive = unwrapped(in_full("olive"));
  CHECK_THAT(olive, Contains("not checked at the source"));
  CHECK_THAT(olive,
             Contains("190 to 195 (olive oil limits in USP form on a supplier sheet; checked)"));
  CHECK_THAT(olive, Contains("C18:2 linoleic 2.5 to 21 *") || Contains("linoleic"));
  CHECK_THAT(unwrapped(in_full("shea")), Contains("a weak choice: the range is 35 mg KOH/g wide"));
  CHECK_THAT(unwrapped(in_full("jojoba")), Contains("its mean molar mass calls for 92.6"));
  CHECK_THAT(unwrapped(in_full("sal")), Contains("none published; estimated"));
  CHECK_THAT(unwrapped(in_full("argan")), Contains("11 (NM 08.5.090, unchecked); 3.4 to 7.9"));
  for (const auto& fat : chemistry::shipped_fats())
    CHECK_THAT(unwrapped(in_full(fat.id)), !Contains("from memory"));
  CHECK_THAT(unwrapped(in_full("lauric_acid")),
             Contains("280.08 mg KOH/g, computed from IUPAC atomic weights.") &&
                 Contains("278 to 283 (general handbook knowledge") &&
                 Contains("Value used: of the pure acid, from its formula"));
}

TEST_CASE("a value at odds with the fatty acids is said in the listing", "[reports]") {
  chemistry::Fat wrong = *chemistry::find_fat("coconut");
  const auto olives = chemistry::SaponificationValue::mg_koh_per_g(190);
  wrong.saponification = {olives, olives, olives};
  CHECK_THAT(unwrapped(catalogue_text({{}, {wrong}}, true)),
             Contains("190 mg KOH/g does not fit its fatty acids"));
  const auto json = nlohmann::json::parse(catalogue_json({{}, {wrong}}));
  CHECK(json["fats"][0]["theoretical_value_mg_koh_per_g"]["disagreement"].is_string());
}

TEST_CASE("the JSON of fats holds what the listing tells", "[reports]") {
  const auto json = nlohmann::json::parse(catalogue_json({{}, chemistry::shipped_fats()}));
  REQUIRE(json["fats"].size() == 51);
  const auto& coconut = json["fats"][0];
  const auto& value = coconut["saponification_value_mg_koh_per_g"];
  CHECK(value["low"] == 246.6);
  CHECK(value["typical"] == 255.8);
  CHECK(value["readings"][0]["low"] == 248);
  CHECK(value["readings"][1]["low"] == 250);
  CHECK(value["readings"][1]["high"].is_null());
  CHECK(coconut["theoretical_value_mg_koh_per_g"]["disagreement"].is_null());
  CHECK(coconut["fatty_acids"]["acids"][3] == nlohmann::json({{"name", "C12:0"},
                                                              {"common_name", "lauric"},
                                                              {"carbons", 12},
                                                              {"double_bonds", 0},
                                                              {"low_percent", 45.1},
                                                              {"high_percent", 53.2},
                                                              {"read", true}}));
  CHECK(coconut["density_g_per_ml"]["per_kelvin"] == -0.00064);
  CHECK(coconut["unsaponifiable"]["most_percent"] == 1.5);
  for (const auto& fat : json["fats"])
    for (const auto* key : {"inci", "inci_sodium_soap", "inci_potassium_soap", "kind"})
      CHECK(fat[key].is_string());
}

TEST_CASE("a wax's listing says what it is, what it takes and what it stays", "[reports]") {
  // British Pharmacopoeia: acid value 17 to 24, saponification value 87 to 104; USP 35, Yellow Wax:
  // the test with sodium hydroxide.
  const std::string text = unwrapped(in_full("beeswax"));
  for (const auto* part :
       {"4 to 110, used: 57", "Value used: halfway from what its free acids alone take",
        "87 to 104 mg KOH/g, British Pharmacopoeia", "in soap stays Cera Alba",
        "Theory: none. It is a wax and no fat",
        "In the pot: lye attacks it slowly, if at all: boiled for half an hour",
        "Sure to react: its free acids alone, from 4 mg KOH/g on",
        "Name on a label: Cera Alba, also where soaps are listed", "Also called: Bees wax,"})
    CHECK_THAT(text, Contains(part));
  CHECK_THAT(text, !Contains("Fatty acid") && !Contains("sodium soap"));
  const auto json =
      nlohmann::json::parse(catalogue_json({{}, {*chemistry::find_fat("lanolin")}}))["fats"][0];
  CHECK(json["theoretical_value_mg_koh_per_g"].is_null());
  CHECK_FALSE(json.contains("fatty_acids"));
  CHECK(json["saponifies_slowly"]["sure_mg_koh_per_g"]["value"] == 0);
  CHECK(json["saponifies_slowly"]["source"] == "British Pharmaceutical Codex 1911, Wool Fat");
}

TEST_CASE("the JSON of fats carries the names that they are found by", "[reports]") {
  const auto json = nlohmann::json::parse(catalogue_json({{}, chemistry::shipped_fats()}));
  for (const auto& fat : json["fats"]) CHECK(fat["also_called"].is_array());
  const auto& coconut = json["fats"][0]["also_called"];
  CHECK(std::count(coconut.begin(), coconut.end(), "Monoi") == 1);
}

TEST_CASE("the short list marks remembered ranges", "[reports]") {
  const std::string text = catalogue_text({{}, chemistry::shipped_fats()}, false);
  CHECK_THAT(text, Contains("255.8 (246.6 to 265)\n"));
  CHECK_THAT(text, Contains("190 (184 to 200) *"));
}

}  // namespace
}  // namespace brimwright::reports
