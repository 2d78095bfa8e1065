#include "planning/weighing.h"

#include "chemistry/formula_file.h"
#include "chemistry/proportions.h"
#include "sample_run.h"
#include "units/printing.h"
#include "weighed.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using chemistry::EffectiveSuperfat;

namespace {

const Scales bench = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};

chemistry::Formula wide_formula(const std::string& superfat) {
  return chemistry::read_formula(Fields::parse(R"({
    "schema": "brimwright.formula/2", "name": "Wide",
    "fats": [ { "fat": "shea", "share": "60 %" }, { "fat": "olive", "share": "40 %" } ],
    "superfat": ")" + superfat + R"(",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %" } ],
    "water": { "lye_strength": "33 %" }, "pour_temperature": "40 °C" })",
                                               "wide.formula.json"));
}

}  // namespace

TEST_CASE("alkali is weighed on the fine scale and rounded down", "[planning]") {
  const Weighing weighing = weighing_of(paper_formula(), 1000 * gram, bench);
  int alkalis = 0, fats = 0;
  for (const auto& ingredient : weighing.ingredients) {
    if (ingredient.role == Role::alkali) {
      ++alkalis;
      CHECK(ingredient.step == 0.1 * gram);
      CHECK(ingredient.weighed <= ingredient.exact);
    }
    if (ingredient.role == Role::fat) {
      ++fats;
      CHECK(ingredient.weighed >= ingredient.exact);
    }
  }
  CHECK(alkalis == 1);
  CHECK(fats == 1);
}

TEST_CASE("what a scale cannot hold is weighed in goes, and alkali moves to the large scale",
          "[planning]") {
  const Weighing weighing = weighing_of(paper_formula(), 20 * kilogram, bench);
  const auto& fat = weighing.ingredients.front();
  // 20 kg / 1.386 = 14.4 kg of fat: three goes on a 5 kg scale.
  CHECK(fat.weighings == 3);
  CHECK(weighing.ingredients.at(2).role == Role::alkali);
  CHECK(weighing.ingredients.at(2).step == 1 * gram);  // 1.9 kg, beyond the 500 g scale
  CHECK(weighing.superfat.nominal >= 5 * percent);     // rounded down, so never below the aim
}

TEST_CASE("the alkali was listed before the water and the milk that it goes into", "[planning]") {
  // Water poured on dry alkali boils up: common practice, no source.
  const auto formula = chemistry::read_formula(Fields::parse(R"({
    "schema": "brimwright.formula/2", "name": "Milk base",
    "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
    "superfat": "5 %",
    "alkali": [ { "alkali": "NaOH", "share": "90 %", "purity": "100 %" },
                { "alkali": "KOH", "share": "10 %", "purity": "90 %" } ],
    "water": { "water_to_alkali": 2 }, "pour_temperature": "35 °C",
    "additives": [ { "name": "kaolin", "rate": "1 % of fats", "goes_into": "batter" },
                   { "name": "sodium lactate", "rate": "1 % of fats", "goes_into": "lye" },
                   { "name": "sugar", "rate": "1 % of fats", "goes_into": "lye" } ],
    "liquids": [ { "name": "goat milk", "replaces": "40 % of water", "goes_into": "lye",
                   "composition": "goat milk" } ] })",
                                                             "milk.formula.json"));
  std::vector<std::string> names;
  for (const auto& ingredient : weighing_of(formula, 1000 * gram, bench).ingredients)
    names.push_back(ingredient.name.substr(0, 5));
  CHECK(names == std::vector<std::string>{"Olive", "Water", "sugar", "goat ", "NaOH,", "KOH, ",
                                          "sodiu", "kaoli"});
}

TEST_CASE("a superfat whose likely band reaches below zero is a danger", "[planning]") {
  // CXS 325R-2017 gives shea 160 to 195 mg/g: 10 % either way, far beyond a superfat of 3 %.
  const Weighing weighing = weighing_of(wide_formula("3 %"), 1000 * gram, bench);
  CHECK(weighing.superfat.likely_low < Share{});
  REQUIRE(weighing.alarms.size() == 1);
  CHECK(weighing.alarms.front().severity == Severity::danger);
  CHECK_THAT(weighing.alarms.front().text, Contains("LYE-HEAVY"));
  CHECK_THAT(weighing.alarms.front().text, Contains("Shea") && Contains("To fix it"));
}

TEST_CASE("a superfat that only the worst corner takes below zero is a caution with its remedy",
          "[planning]") {
  EffectiveSuperfat superfat;
  superfat.nominal = 5 * percent;
  superfat.low = -0.04 * percent;
  superfat.likely_low = 1.2 * percent;
  superfat.likely_high = 8.7 * percent;
  superfat.high = 10 * percent;
  superfat.dominant_cause = "the purity of KOH (88 to 92 %)";
  superfat.remedy = "ask the supplier for this lot's purity, or plan a higher superfat";
  const auto alarms = superfat_alarms(superfat, "Base");
  REQUIRE(alarms.size() == 1);
  CHECK(alarms.front().severity == Severity::caution);
  // Not "0.0 %, below zero".
  CHECK_THAT(alarms.front().text, Contains("at worst -0.1 %, below zero"));
  CHECK_THAT(alarms.front().text, Contains("plan a higher superfat"));

  superfat.low = 0.01 * percent;
  CHECK(superfat_alarms(superfat, "Base").empty());
  superfat.low = -3 * percent;
  superfat.likely_low = -0.04 * percent;
  CHECK(superfat_alarms(superfat, "Base").front().severity == Severity::danger);
}

TEST_CASE("water rounded by the scale never makes a lye that does not dissolve", "[planning]") {
  // 50 % strong as planned: half a gram of water less on a 1 g scale would be 53 % in a small pot.
  chemistry::Formula formula = wide_formula("8 %");
  formula.water = chemistry::LyeStrength{50 * percent};
  const Scales kitchen = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};
  for (double batter_g = 30; batter_g < 120; batter_g += 0.7) {
    const Weighing weighing = weighing_of(formula, batter_g * gram, kitchen);
    CAPTURE(batter_g);
    CHECK(weighing.lye_strength.of_one() <= 0.5 + 1e-9);
    CHECK(weighing.water > Mass{});
  }
}

TEST_CASE("a lye that the scale makes much weaker than planned is pointed out", "[planning]") {
  const Scales coarse = {.large = {10 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};
  const Weighing weighing = weighing_of(paper_formula(), 24 * gram, coarse);
  bool said = false;
  for (const auto& remark : weighing.remarks)
    said = said || remark.text.find("weigh the water on a finer scale") != std::string::npos;
  const Share planned = chemistry::proportions(paper_formula()).lye_strength;
  REQUIRE((planned - weighing.lye_strength).in_percent() > 2);  // 10 g steps for some 6 g of water
  CHECK(said);
  CHECK(weighing.water / gram == Approx(10));  // 4 g of water would be asked for
}

TEST_CASE("a run too small for the scale gets no alkali figure at all", "[planning]") {
  const Scales kitchen = {.large = {1 * gram, 5 * kilogram}, .fine = {1 * gram, 5 * kilogram}};
  // 5 g of fat take 0.64 g of NaOH, which a 1 g scale does not show.
  CHECK_THROWS_WITH(weighing_of(paper_formula(), 6 * gram, kitchen),
                    Contains("less than the scale's step"));
}

TEST_CASE("a scale too coarse for a small batch is pointed out", "[planning]") {
  const Scales kitchen = {.large = {1 * gram, 5 * kilogram}, .fine = {1 * gram, 5 * kilogram}};
  // 15 g of fat take 1.93 g of NaOH; a 1 g scale gives 1 g, half of it.
  const Weighing weighing = weighing_of(paper_formula(), 20 * gram, kitchen);
  bool said = false;
  for (const auto& remark : weighing.remarks)
    said = said || remark.text.find("the batch is small for this scale") != std::string::npos;
  CHECK(said);
}

TEST_CASE("the three ways of saying water agree with the weighed masses", "[planning]") {
  const Weighing weighing = weighing_of(paper_formula(), 2000 * gram, bench);
  // Definitions: strength = alkali / (alkali + water); pure NaOH here.
  CHECK(weighing.lye_strength.of_one() ==
        Approx(weighing.naoh / (weighing.naoh + weighing.water)).epsilon(1e-12));
  CHECK(weighing.water_to_alkali == Approx(weighing.water / weighing.naoh).epsilon(1e-12));
  CHECK(weighing.water_of_fats.of_one() == Approx(weighing.water / weighing.fats).epsilon(1e-12));
}

TEST_CASE("a batch too small for its scales is told how large it should be", "[planning]") {
  // On paper, 100 g of fats at 190 mg/g take 12.87 g of NaOH at 5 %: on a 1 g scale u = 0.95 x
  // 0.2887 / 12.87 = 2.13 points, x 1.96 = 4.2; the fat's own step adds little. 0.5 points take 8.4
  // times as much, some 840 g.
  const Scales kitchen = {.large = {1 * gram, 5 * kilogram}, .fine = {1 * gram, 5 * kilogram}};
  const Weighing small = weighing_of(paper_formula(), 138 * gram, kitchen);
  const auto told = [](const Weighing& weighing) {
    for (const auto& remark : weighing.doubts)
      if (remark.text.find("of fats on the scales keep within ±0.5 points") != std::string::npos)
        return remark.text;
    return std::string();
  };
  CHECK_THAT(told(small), Contains("From 8") || Contains("From 9"));
  CHECK(told(weighing_of(paper_formula(), 300 * gram, bench)).empty());
  CHECK(told(weighing_of(paper_formula(), 2 * kilogram, kitchen)).empty());
}

TEST_CASE("weighing in goes makes the superfat less sure", "[planning]") {
  // 1.9 kg of NaOH on scales that hold 5 kg or 500 g, both of 1 g: four goes are off by twice as
  // much, likely, and by four times at worst; so is the fat in its three and thirty.
  const Scales deep = {.large = {1 * gram, 50 * kilogram}, .fine = {1 * gram, 50 * kilogram}};
  const Scales shallow = {.large = {1 * gram, 0.5 * kilogram}, .fine = {1 * gram, 0.5 * kilogram}};
  const auto once = weighing_of(paper_formula(), 20 * kilogram, deep).superfat;
  const auto often = weighing_of(paper_formula(), 20 * kilogram, shallow).superfat;
  CHECK(often.likely_by_scales.of_one() > 1.9 * once.likely_by_scales.of_one());
  CHECK(often.low < once.low);
}
