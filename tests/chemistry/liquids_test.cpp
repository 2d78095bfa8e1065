#include "chemistry/liquids.h"

#include "chemistry/liquid_compositions.h"
#include "chemistry/proportions.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::read;

/// Olive alone at 190 mg/g, pure NaOH, 5 % superfat, water 2 : 1, with `liquids`.
std::string with_liquids(const std::string& liquids) {
  return R"({ "schema": "brimwright.formula/2", "name": "Milk base",
    "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
    "superfat": "5 %",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "100 %" } ],
    "water": { "water_to_alkali": 2 },
    "pour_temperature": "35 °C",
    "liquids": [ )" +
         liquids + " ] }";
}

const std::string tin =
    R"({ "water": "72 %", "fat": { "fat": "coconut", "share": "21 %" }, "sugar": "3 %",
         "salt": "0 %", "source": "the tin" })";

std::string liquid(const std::string& amount, const std::string& goes_into,
                   const std::string& composition = tin) {
  return R"({ "name": "coconut milk", )" + amount + R"(, "goes_into": ")" + goes_into +
         R"(", "composition": )" + composition + " }";
}

TEST_CASE("coconut milk's fat asks for lye and its water is water", "[chemistry]") {
  // By hand, for 1 g of fats with 0.15 g of the milk: IUPAC 2021 weights give NaOH / KOH =
  // 0.712888; coconut's middle value is 255.8 mg/g (265 by CXS 210-1999, 246.6 by its fatty acids).
  //   NaOH  = (0.190 + 0.15 x 0.21 x 0.2558) x 0.712888 x 0.95 = 0.134133 g
  //   water = 2 x 0.134133 = 0.268266 g, of which the milk brings 0.15 x 0.72 = 0.108 g
  const Proportions p =
      proportions(read(with_liquids(liquid(R"("rate": "15 % of fats")", "batter"))));
  const double naoh = (0.190 + 0.15 * 0.21 * 0.2558) * 0.712888 * 0.95;
  CHECK_THAT(p.pure_alkali, WithinRel(naoh, 1e-5));
  CHECK_THAT(p.water, WithinRel(2 * naoh - 0.108, 1e-5));
  CHECK_THAT(p.water_in_liquids, WithinRel(0.108, 1e-12));
  CHECK_THAT(p.lye_strength.of_one(), WithinRel(1.0 / 3, 1e-9));  // all water counted
  CHECK_THAT(p.pot_strength.of_one(), WithinRel(naoh / (3 * naoh - 0.108), 1e-5));
  CHECK_THAT(p.batter, WithinRel(1 + naoh + 2 * naoh - 0.108 + 0.15, 1e-6));
}

TEST_CASE("a liquid that replaces 40 % of the water brings just that much water", "[chemistry]") {
  const Formula formula = read(with_liquids(liquid(R"("replaces": "40 % of water")", "batter")));
  const Proportions p = proportions(formula);
  CHECK_THAT(p.water_in_liquids, WithinRel(0.4 * (p.water + p.water_in_liquids), 1e-12));
  CHECK_THAT(p.additives.at(0), WithinRel(p.water_in_liquids / 0.72, 1e-12));
  CHECK_THAT(p.water_to_alkali, WithinRel(2, 1e-12));
}

TEST_CASE("a liquid in the lye leaves its pot as strong as the batter's lye", "[chemistry]") {
  const Proportions p =
      proportions(read(with_liquids(liquid(R"("replaces": "100 % of water")", "lye"))));
  CHECK_THAT(p.water, WithinAbs(0, 1e-12));
  CHECK_THAT(p.pot_strength.of_one(), WithinRel(p.lye_strength.of_one(), 1e-9));
}

TEST_CASE("alkali needs its own weight of water in the pot", "[chemistry]") {
  // Water 2 : 1; half of it in the pot is 1 : 1, a strength of 50 %, the most that is let pass.
  CHECK_NOTHROW(read(with_liquids(liquid(R"("replaces": "50 % of water")", "batter"))));
  const std::string starved = with_liquids(liquid(R"("replaces": "60 % of water")", "batter"));
  CHECK_THROWS_WITH(read(starved), Contains("/liquids") && Contains("55.6 % strong") &&
                                       Contains("at most 50 % of the water"));
}

TEST_CASE("liquids cannot bring more water than the formula has", "[chemistry]") {
  CHECK_THROWS_WITH(read(with_liquids(liquid(R"("rate": "60 % of fats")", "lye"))),
                    Contains("more than all of it"));
}

struct Slip {
  std::string liquid, says;
};

TEST_CASE("a liquid is refused in one line that says how to mend it", "[chemistry]") {
  const auto composed = [](const std::string& composition) {
    return liquid(R"("rate": "10 % of fats")", "batter", composition);
  };
  const std::vector<Slip> slips = {
      {R"({ "name": "goat milk", "rate": "10 % of fats", "goes_into": "lye" })",
       "/liquids/0/composition: is missing"},
      {composed(R"("cocnut milk, canned")"), "did you mean \"coconut milk, canned\"?"},
      {composed(R"("unicorn milk")"), "not a composition known here"},
      {composed(
           R"({ "water": "90 %", "fat": "none", "sugar": "8 %", "salt": "5 %", "source": "x" })"),
       "adds to 103 %"},
      {composed(
           R"({ "water": "20 %", "fat": "none", "sugar": "8 %", "salt": "5 %", "source": "x" })"),
       "too little for a liquid that stands in for water"},
      {composed(
           R"({ "water": "70 %", "fat": "none", "sugar": "0 %", "salt": "30 %", "source": "x" })"),
       "more salt than its water dissolves"},
      {composed(R"({ "water": "90 %", "fat": "none", "salt": "0 %", "source": "x" })"),
       "/liquids/0/composition/sugar"},
      {liquid(R"("replaces": "40 %")", "lye"), "does not end in \"of water\""},
      {liquid(R"("replaces": "140 % of water")", "lye"), "up to 100 %"},
      {liquid(R"("replaces": "40 % of water", "rate": "3 % of fats")", "lye"),
       "stands beside \"rate\""},
      {liquid(R"("frozen": true)", "lye"), "give either \"replaces\""},
      {liquid(R"("rate": "10 % of fats")", "fats"), "/liquids/0/goes_into"},
      {R"({ "name": "cider vinegar", "replaces": "20 % of water", "goes_into": "lye", "composition":
           { "water": "95 %", "fat": "none", "sugar": "0 %", "salt": "0 %", "source": "bottle" } })",
       "sounds like an acid"},
  };
  for (const Slip& slip : slips) {
    CAPTURE(slip.liquid);
    CHECK_THROWS_WITH(read(with_liquids(slip.liquid)), Contains(slip.says));
  }
}

TEST_CASE("vinegar as a liquid uses up alkali by its acid", "[chemistry]") {
  const Proportions p = proportions(read(with_liquids(
      R"x({ "name": "vinegar", "rate": "10 % of fats", "goes_into": "lye",
           "contains_acid": { "acid": "acetic acid (100 %)", "share": "5 %" }, "composition":
           { "water": "95 %", "fat": "none", "sugar": "0 %", "salt": "0 %", "source": "bottle" } })x")));
  // IUPAC 2021 weights: acetic acid 60.052, NaOH 39.997 g/mol; one proton.
  CHECK_THAT(p.pure_alkali,
             WithinRel(0.190 * 0.712888 * 0.95 + 0.1 * 0.05 * 39.99677 / 60.052, 1e-5));
}

TEST_CASE("milk weighs what milk weighs", "[chemistry]") {
  // Whole cow's milk 1.027 to 1.033 g/ml at 20 degC (dairy texts, from memory).
  const LiquidComposition* milk = find_liquid_composition("cow's milk, whole");
  REQUIRE(milk != nullptr);
  CHECK_THAT(density_from_contents(milk->liquid, milk->fat) / gram_per_millilitre,
             WithinAbs(1.030, 0.006));
}

TEST_CASE("brine weighs what the table of brines says", "[chemistry]") {
  // Poradnik fizykochemiczny, WNT Warszawa 1974 (reprinted by the Torun physics laboratory, read):
  // sodium chloride at 20 degC, g/ml. The salt's apparent density is from the 26 % row; it is lower
  // in weaker brine, at most 0.8 % of the whole.
  const auto [salt, density] = GENERATE(table<double, double>(
      {{4, 1.0268}, {10, 1.0707}, {16, 1.1162}, {20, 1.1478}, {24, 1.1804}, {26, 1.1972}}));
  CAPTURE(salt);
  Liquid brine;
  brine.salt = salt * percent;
  brine.water = (100 - salt) * percent;
  CHECK_THAT(density_from_contents(brine, std::nullopt) / gram_per_millilitre,
             WithinRel(density, 0.008));
}

TEST_CASE("every shipped composition is a liquid and adds up to no more than itself",
          "[chemistry]") {
  CHECK(liquid_compositions().size() >= 10);
  for (const auto& c : liquid_compositions()) {
    CAPTURE(c.name);
    const double fat = c.fat ? c.fat->share.of_one() : 0;
    CHECK(c.liquid.water.of_one() + c.liquid.sugar.of_one() + c.liquid.salt.of_one() + fat <=
          1 + 1e-9);
    CHECK_FALSE(c.liquid.source.empty());
    const std::string entry = liquid(R"("replaces": "30 % of water")", "lye", "\"" + c.name + "\"");
    CHECK_NOTHROW(read(with_liquids(entry)));
  }
  // CRC Handbook, read in a public copy: 26.41 % of salt in saturated brine at 20 degC.
  CHECK_THAT(saturated_brine().in_percent(), WithinAbs(26.41, 1e-9));
}

bool is_said(const std::vector<Remark>& remarks, const std::string& part) {
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const Remark& r) { return r.text.find(part) != std::string::npos; });
}

TEST_CASE("sugar in hot lye, salt in lye and much sugar are warned of", "[chemistry]") {
  const auto cautions = [](const std::string& entry) {
    const Formula formula = read(with_liquids(entry));
    return liquid_cautions(formula, proportions(formula));
  };
  CHECK(is_said(cautions(liquid(R"("replaces": "50 % of water")", "lye")), "in hot lye it browns"));
  CHECK_FALSE(is_said(cautions(liquid(R"("replaces": "50 % of water", "frozen": true)", "lye")),
                      "in hot lye it browns"));
  CHECK(is_said(
      cautions(liquid(R"("replaces": "90 % of water")", "lye", R"("brine, saturated at 20 °C")")),
      "leaves less room for the alkali"));
  CHECK(is_said(cautions(liquid(R"("replaces": "90 % of water")", "lye", R"("milk, evaporated")")),
                "of the fats as sugar"));
  CHECK(
      is_said(cautions(liquid(R"("replaces": "20 % of water")", "batter", R"("avocado, puréed")")),
              "not checked at the source"));
  // Water 2 : 1, half of it in the batter's milk: 1 : 1 in the pot.
  CHECK(is_said(cautions(liquid(R"("replaces": "50 % of water")", "batter")),
                "the lye solution is 50 % strong in its pot and 33.3 % in the batter"));
}

std::vector<Remark> cautions_with(const std::string& name, GoesInto goes_into) {
  Formula formula = read(with_liquids(""));
  Additive additive;
  additive.name = name;
  additive.rate = {2 * percent, RateBasis::fats};
  additive.goes_into = goes_into;
  formula.additives.push_back(additive);
  return liquid_cautions(formula, proportions(formula));
}

TEST_CASE("honey, beer and melt-and-pour went into the lye without a word", "[chemistry]") {
  const auto [name, says] = GENERATE(table<std::string, std::string>({
      {"honey", "carbon monoxide"},
      {"Cane sugar, dissolved", "an open vessel in fresh air"},
      {"goat milk", "an open vessel in fresh air"},
      {"oat-milk", "an open vessel in fresh air"},
      {"dark beer", "foams over"},
      {"Weißbier", "foams over"},
      {"Bière brune", "foams over"},
      {"Ziegenmilch", "fresh air"},
      {"red WINE", "Boil the alcohol off and let it go flat"},
      {"white rum", "Boil the alcohol off"},
      {"clear melt-and-pour base", "glycol"},
      {"propylene glycol", "glycol"},
  }));
  CAPTURE(name);
  CHECK(is_said(cautions_with(name, GoesInto::lye), says));
  CHECK_FALSE(is_said(cautions_with(name, GoesInto::batter), says));
}

TEST_CASE("what is no sugar, beer or glycol draws no caution in the lye", "[chemistry]") {
  const std::string name =
      GENERATE("salt", "sodium lactate", "silk", "ginger tea", "apple cider vinegar", "Apfelessig",
               "sorbitol", "cream of tartar", "milkweed", "aleppo clay", "meadowsweet",
               "tea, sugar-free", "milchfrei", "rumex", "glycerin");
  CAPTURE(name);
  CHECK(cautions_with(name, GoesInto::lye).empty());
}

TEST_CASE("frozen milk in the lye still wants an open vessel", "[chemistry]") {
  const Formula formula =
      read(with_liquids(liquid(R"("replaces": "50 % of water", "frozen": true)", "lye")));
  CHECK(is_said(liquid_cautions(formula, proportions(formula)), "an open vessel in fresh air"));
}

TEST_CASE("an acid counts once", "[chemistry]") {
  const auto additives = [](const std::string& list, const std::string& liquids) {
    return test::with(with_liquids(liquids), R"("liquids")",
                      R"("additives": [ )" + list + R"( ], "liquids")");
  };
  const auto citric = [](const std::string& name) {
    return R"({ "name": ")" + name + R"(", "rate": "1 % of fats", "goes_into": "lye",
              "contains_acid": { "acid": "citric acid, anhydrous", "share": "100 %" } })";
  };
  CHECK_THROWS_WITH(read(additives(citric("citric acid") + "," + citric("Citric acid"), "")),
                    Contains("is listed twice"));
  const std::string juice =
      R"({ "name": "lemon juice", "replaces": "10 % of water", "goes_into": "lye",
           "contains_acid": { "acid": "citric acid, anhydrous", "share": "6 %" }, "composition":
           { "water": "91 %", "fat": "none", "sugar": "2 %", "salt": "0 %", "source": "label" } })";
  CHECK_THROWS_WITH(read(additives(citric("citric acid"), juice)), Contains("counts twice"));
  CHECK_NOTHROW(read(additives(citric("citric acid"), "")));
  CHECK_NOTHROW(read(additives("", juice)));

  const std::string stearic =
      R"({ "name": "hardening powder", "rate": "1 % of fats", "goes_into": "fats",
           "contains_fat": { "fat": "stearic_acid", "share": "90 %" } })";
  const std::string text = test::with(
      additives(stearic, ""), R"("fats": [ { "fat": "olive", "share": "100 %")",
      R"("fats": [ { "fat": "stearic_acid", "share": "5 %" }, { "fat": "olive", "share": "95 %")");
  CHECK_THROWS_WITH(read(text), Contains("\"stearic_acid\" counts twice"));
}

TEST_CASE("whatever liquid replaces water, all that goes in is the batter", "[chemistry][law]") {
  rc::prop("mass is kept and the stated strength holds", [] {
    const auto& all = liquid_compositions();
    const auto& composition = *rc::gen::elementOf(all);
    const int share = *rc::gen::inRange(1, 101);
    const Formula formula =
        read(with_liquids(liquid("\"replaces\": \"" + std::to_string(share) + " % of water\"",
                                 "lye", "\"" + composition.name + "\"")));
    const Proportions p = proportions(formula);
    double parts = p.water;
    for (const double part : p.fats) parts += part;
    for (const double part : p.alkalis) parts += part;
    for (const double part : p.additives) parts += part;
    RC_ASSERT(std::abs(parts - p.batter) < 1e-12);
    RC_ASSERT(std::abs(p.water_to_alkali - 2) < 1e-9);
    RC_ASSERT(std::abs(p.water_in_liquids - share / 100.0 * 2 * p.pure_alkali) < 1e-9);
  });
}

}  // namespace
}  // namespace brimwright::chemistry
