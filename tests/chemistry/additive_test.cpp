#include "chemistry/fat_density.h"
#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "chemistry/suspicious_names.h"
#include "formulas.h"

#include <catch2/catch.hpp>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::read;
using test::with_only;

struct Slip {
  std::string list, entry;
  std::string field;
  std::string says;
};

void check_refused(const Slip& slip) {
  CAPTURE(slip.entry);
  try {
    read(with_only(slip.list, slip.entry));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == slip.field);
    CHECK_THAT(std::string(error.what()), Contains(slip.says));
    CHECK_FALSE(error.parts().remedy.empty());
  }
}

TEST_CASE("an additive named like an acid must say which acid it is", "[chemistry]") {
  const auto name = GENERATE(values<std::string>(
      {"citric acid", "Citric Acid Monohydrate", "lactic acid 88 %", "white vinegar", "lemon juice",
       "ascorbic acid", "Vitamin C powder", "malic acid", "tartaric acid", "acetic acid",
       "glycolic acid", "cream of tartar"}));
  check_refused({"additives",
                 R"({ "name": ")" + name + R"(", "rate": "1 % of fats", "goes_into": "lye" })",
                 "/additives/0/contains_acid", "sounds like an acid"});
}

TEST_CASE("a salt of an acid is already neutral", "[chemistry]") {
  const auto name = GENERATE(
      values<std::string>({"sodium lactate", "sodium citrate 2-hydrate", "potassium citrate",
                           "tetrasodium glutamate", "soil-coloured clay", "placid lake scent"}));
  CAPTURE(name);
  const std::string entry =
      R"({ "name": ")" + name + R"(", "rate": "1 % of fats", "goes_into": "lye" })";
  CHECK_NOTHROW(read(with_only("additives", entry)));
}

TEST_CASE("sodium lactate goes into the cooled lye, all else before the alkali, unless it is said",
          "[chemistry]") {
  // Common practice, no source.
  const auto [name, said, is_cooled] = GENERATE(table<std::string, std::string, bool>({
      {"Sodium Lactate, 60 %", "", true},
      {"sodium lactate", "before the alkali", false},
      {"sodium lactate", "once the lye has cooled", true},
      {"table salt", "", false},
      {"table salt", "once the lye has cooled", true},
      {"silk", "before the alkali", false},
  }));
  CAPTURE(name, said);
  const std::string when = said.empty() ? "" : R"(, "stirred_in": ")" + said + "\"";
  const auto formula = read(with_only(
      "additives",
      R"({ "name": ")" + name + R"(", "rate": "1 % of fats", "goes_into": "lye")" + when + "}"));
  CHECK(formula.additives.front().into_cooled_lye == is_cooled);
  const auto in_batter =
      read(with_only("additives", R"({ "name": ")" + name +
                                      R"(", "rate": "1 % of fats", "goes_into": "batter" })"));
  CHECK_FALSE(in_batter.additives.front().into_cooled_lye);
}

TEST_CASE("when something is stirred into the lye is asked of nothing else, and acid never waits",
          "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {"additives",
       R"({ "name": "silk", "rate": "1 % of fats", "goes_into": "batter", "stirred_in": "before the alkali" })",
       "/additives/0/stirred_in", "goes into the lye"},
      {"additives",
       R"({ "name": "silk", "rate": "1 % of fats", "goes_into": "lye", "stirred_in": "cold" })",
       "/additives/0/stirred_in", "once the lye has cooled"},
      {"additives",
       R"({ "name": "citric acid", "rate": "1 % of fats", "goes_into": "lye",
            "contains_acid": { "acid": "citric acid, anhydrous", "share": "100 %" },
            "stirred_in": "once the lye has cooled" })",
       "/additives/0/stirred_in", "acid into strong lye"},
  })));
}

TEST_CASE("an additive that sounds fatty must say how much fat it holds", "[chemistry]") {
  const auto name = GENERATE(values<std::string>({"goat milk", "Coconut Milk", "buttermilk powder",
                                                  "heavy cream", "plain yogurt", "yoghurt", "kefir",
                                                  "shea butter", "argan oil", "egg yolk", "lard"}));
  check_refused({"additives",
                 R"({ "name": ")" + name + R"(", "rate": "1 % of fats", "goes_into": "fats" })",
                 "/additives/0/contains_fat", "sounds as if it held fat"});
}

TEST_CASE("\"none\" answers a suspicion", "[chemistry]") {
  const auto formula = read(
      with_only("additives", R"({ "name": "lactic milk thistle oil-free", "rate": "1 % of fats",
                        "goes_into": "lye", "contains_acid": "none", "contains_fat": "none" })"));
  CHECK_FALSE(formula.additives[0].contains_acid);
  CHECK_FALSE(formula.additives[0].contains_fat);
}

TEST_CASE("a scent called milk and honey is a scent", "[chemistry]") {
  CHECK_NOTHROW(
      read(with_only("fragrances", R"({ "name": "Milk and honey", "rate": "2 % of fats" })")));
  CHECK_NOTHROW(read(with_only("colours", R"({ "name": "buttercup", "rate": "2 g/kg of fats" })")));
  CHECK_FALSE(names_something_fatty("lavender essential oil"));
  CHECK_FALSE(names_something_fatty("soil"));
}

TEST_CASE("a fatty acid belongs among the fats", "[chemistry]") {
  check_refused({"additives",
                 R"({ "name": "Stearic acid", "rate": "2 % of fats", "goes_into": "fats" })",
                 "/additives/0/name", "\"fats\""});
  check_refused({"additives",
                 R"({ "name": "hardener", "rate": "2 % of fats", "goes_into": "fats",
                      "contains_acid": { "acid": "stearic acid", "share": "100 %" } })",
                 "/additives/0/contains_acid/acid", "\"fats\""});
}

TEST_CASE("spoons, densities and rates that say nothing are refused", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {"additives", R"({ "name": "kaolin", "rate": "1 tsp/lb of fats", "goes_into": "fats" })",
       "/additives/0/rate", "bulk_density"},
      {"additives",
       R"({ "name": "kaolin", "rate": "1 % of fats", "limit": "1 tsp/lb of fats", "goes_into": "fats" })",
       "/additives/0/limit", "bulk_density"},
      {"additives", R"({ "name": "kaolin", "rate": "0 % of fats", "goes_into": "fats" })",
       "/additives/0/rate", "is zero"},
      {"additives", R"({ "name": "kaolin", "rate": "2 %", "goes_into": "fats" })",
       "/additives/0/rate", "of what"},
      {"additives", R"({ "name": "kaolin", "rate": 2, "goes_into": "fats" })", "/additives/0/rate",
       "without a unit"},
      {"additives", R"({ "name": "kaolin", "rate": "2 % of fats" })", "/additives/0/goes_into",
       "is missing"},
      {"additives", R"({ "name": "kaolin", "rate": "2 % of fats", "goes_into": "pot" })",
       "/additives/0/goes_into", "batter"},
      {"additives",
       R"({ "name": "kaolin", "rate": "2 % of fats", "goes_into": "fats", "density": "7 g/ml" })",
       "/additives/0/density", "0.05 and 6"},
      {"additives",
       R"({ "name": "kaolin", "rate": "2 % of fats", "goes_into": "fats", "bulk_density": "0.04 g/ml" })",
       "/additives/0/bulk_density", "0.05 and 6"},
      {"additives",
       R"({ "name": "kaolin", "rate": "2 % of fats", "goes_into": "fats", "density": 2.6 })",
       "/additives/0/density", "unit"},
      {"additives",
       R"({ "name": "kaolin", "rate": "2 % of fats", "goes_into": "fats", "desity": "2.6 g/ml" })",
       "/additives/0/desity", "did you mean \"density\"?"},
      {"additives", R"({ "name": "a", "rate": "80 % of batter", "goes_into": "fats" })",
       "/additives", "80 % of the batter"},
  })));
}

TEST_CASE("an acid is named from the table", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {"additives",
       R"({ "name": "sour", "rate": "1 % of fats", "goes_into": "lye", "contains_acid": { "acid": "citric acid", "share": "100 %" } })",
       "/additives/0/contains_acid/acid",
       "\"citric acid, anhydrous\" or \"citric acid monohydrate\""},
      {"additives",
       R"({ "name": "sour", "rate": "1 % of fats", "goes_into": "lye", "contains_acid": { "acid": "aqua regia", "share": "100 %" } })",
       "/additives/0/contains_acid/acid", "name one of"},
      {"additives",
       R"({ "name": "sour", "rate": "1 % of fats", "goes_into": "lye", "contains_acid": { "acid": "malic acid" } })",
       "/additives/0/contains_acid/share", "is missing"},
      {"additives",
       R"({ "name": "sour", "rate": "1 % of fats", "goes_into": "lye", "contains_acid": { "acid": "malic acid", "share": "0 %" } })",
       "/additives/0/contains_acid/share", "0 %"},
      {"additives",
       R"({ "name": "sour", "rate": "1 % of fats", "goes_into": "lye", "contains_acid": "yes" })",
       "/additives/0/contains_acid", "none"},
      {"fragrances", R"({ "name": "lime", "rate": "1 % of fats", "contains_acid": "none" })",
       "/fragrances/0/contains_acid", "unknown key"},
      {"additives",
       R"({ "name": "milk", "rate": "1 % of fats", "goes_into": "lye", "contains_fat": { "fat": "cow", "share": "4 %" } })",
       "/additives/0/contains_fat/fat", "not a fat known"},
  })));
}

TEST_CASE("milk counted as all fat asks for lye that no fat takes", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {"additives",
       R"({ "name": "coconut milk", "rate": "8 % of fats", "goes_into": "batter", "contains_fat": { "fat": "coconut", "share": "100 %" } })",
       "/additives/0/contains_fat/share", "at most 40 %"},
      {"additives",
       R"({ "name": "Ziegenmilch", "rate": "8 % of fats", "goes_into": "batter", "contains_fat": { "fat": "coconut", "share": "41 %" } })",
       "/additives/0/contains_fat/share", "at most 12 %"},
      {"additives",
       R"({ "name": "egg yolk", "rate": "8 % of fats", "goes_into": "batter", "contains_fat": { "fat": "olive", "share": "60 %" } })",
       "/additives/0/contains_fat/share", "at most 36 %"},
      {"liquids",
       R"({ "name": "goat milk", "rate": "8 % of fats", "goes_into": "batter", "composition": { "water": "50 %", "fat": { "fat": "milk_fat", "share": "41 %" }, "sugar": "4 %", "salt": "0 %", "source": "label" } })",
       "/liquids/0/composition", "at most 12 %"},
  })));
}

TEST_CASE("what may be fat altogether, or is fatter dried, is not refused as milk", "[chemistry]") {
  // Fat of 100 g, from memory of labels: shea butter 100, heavy cream 36, dried yolk 60.
  const auto [name, share] =
      GENERATE(table<std::string, std::string>({{"shea butter", "100 %"},
                                                {"coconut milk", "21 %"},
                                                {"whipping cream", "36 %"},
                                                {"egg yolk powder", "60 %"},
                                                {"milk thistle oil", "100 %"},
                                                {"Kokosmilchpulver", "65 %"},
                                                {"ghee", "99 %"}}));
  const auto formula =
      read(with_only("additives", R"({ "name": ")" + name +
                                      R"(", "rate": "2 % of fats", "goes_into": "batter",
                     "contains_fat": { "fat": "olive", "share": ")" +
                                      share + R"(" }, "contains_acid": "none" })"));
  CHECK(formula.additives[0].contains_fat);
}

TEST_CASE("dispersing oil must be there to be taken", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "dispersed_in": { "fat": "castor", "oil_per_colour": 2 } })",
       "/colours", "the formula, which has no \"castor\""},
      {"colours",
       R"({ "name": "mica", "rate": "7 % of fats", "dispersed_in": { "fat": "olive", "oil_per_colour": 9 } })",
       "/colours", "63 % of the fats"},
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "dispersed_in": { "fat": "olive", "oil_per_colour": 0 } })",
       "/colours/0/dispersed_in/oil_per_colour", "above 0"},
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "dispersed_in": { "fat": "olive", "oil_per_colour": 2, "from": "bottle" } })",
       "/colours/0/dispersed_in/from", "extra"},
      {"additives",
       R"({ "name": "clay", "rate": "1 % of fats", "goes_into": "fats", "dispersed_in": { "fat": "olive", "oil_per_colour": 2 } })",
       "/additives/0/dispersed_in", "unknown key"},
  })));
}

TEST_CASE("a colour's oil may be measured in spoons", "[chemistry]") {
  // 14.78676478125 ml of a tablespoon are three times 4.92892159375 ml of a teaspoon (NIST SP 811).
  const auto ratio = [](const std::string& said) {
    return read(with_only("colours", R"({ "name": "mica", "rate": "1 % of fats", "bulk_density":
      "2.5 g/tsp", "dispersed_in": { "fat": "olive", "oil_per_colour": )" +
                                         said + " } }"))
        .additives[0]
        .dispersal->oil_per_powder;
  };
  const double oil =
      density_of(*shipped_table().find("olive"), Temperature::in_celsius(20)).density /
      gram_per_millilitre;
  CHECK_THAT(ratio(R"("1 tsp in 1 tbsp")"), WithinRel(14.78676478125 * oil / 2.5, 1e-12));
  CHECK_THAT(ratio(R"("1 tsp in 15 g of oil")"), WithinRel(15 / 2.5, 1e-12));
  CHECK_THAT(ratio(R"("5 g in 1 tbsp")"), WithinRel(14.78676478125 * oil / 5, 1e-12));
  CHECK_THAT(ratio(R"("5 g in 15 g")"), WithinRel(3.0, 1e-12));
  check_refused(GENERATE(values<Slip>({
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "density": "3 g/ml", "dispersed_in": { "fat": "olive", "oil_per_colour": "1 tsp in 1 tbsp" } })",
       "/colours/0/dispersed_in/oil_per_colour", "bulk_density"},
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "dispersed_in": { "fat": "olive", "oil_per_colour": "1 tsp" } })",
       "/colours/0/dispersed_in/oil_per_colour", "into how much"},
      {"colours",
       R"({ "name": "mica", "rate": "1 % of fats", "dispersed_in": { "fat": "olive", "oil_per_colour": "1 g in 30 g" } })",
       "/colours/0/dispersed_in/oil_per_colour", "up to 20"},
  })));
}

TEST_CASE("of a liquid one density does for the spoon and the batter", "[chemistry]") {
  const auto blend = [](const std::string& density) {
    return read(with_only("fragrances",
                          R"({ "name": "blend", "rate": "1 tsp/lb of oils", )" + density + " }"))
        .additives[0];
  };
  for (const char* given : {R"("density": "0.9 g/ml")", R"("bulk_density": "0.9 g/ml")"}) {
    const Additive one = blend(given);
    CHECK(one.density == one.bulk_density);
    CHECK_THAT(*one.density / gram_per_millilitre, WithinAbs(0.9, 1e-12));
  }
  // Of a powder the two differ by the air between its grains.
  check_refused(
      {"additives",
       R"({ "name": "clay", "rate": "1 tsp/lb of oils", "goes_into": "fats", "density": "2.6 g/ml" })",
       "/additives/0/rate", "the air that a spoonful holds"});
}

TEST_CASE("extra dispersing oil need not be in the formula", "[chemistry]") {
  const auto formula = read(with_only("colours", R"({ "name": "mica", "rate": "1 % of fats",
                      "dispersed_in": { "fat": "castor", "oil_per_colour": 2, "from": "extra" } })"));
  CHECK_FALSE(formula.additives[0].dispersal->from_the_formula);
}

}  // namespace
}  // namespace brimwright::chemistry
