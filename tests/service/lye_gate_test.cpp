#include "service/lye_gate.h"

#include "chemistry/formula_file.h"
#include "sample_run.h"
#include "weighed.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;

namespace {

const Scales bench = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};

chemistry::Formula rich_formula() {
  return chemistry::read_formula(Fields::parse(R"({
    "schema": "brimwright.formula/2", "name": "Everything",
    "fats": [ { "fat": "olive", "share": "70 %", "saponification_value": 190 },
              { "fat": "coconut", "share": "30 %", "saponification_value": 257 } ],
    "superfat": "4 %",
    "alkali": [ { "alkali": "KOH", "share": "40 %", "purity": "90 %" },
                { "alkali": "NaOH", "share": "60 %", "purity": "99 %" } ],
    "water": { "lye_strength": "30 %" }, "pour_temperature": "40 °C",
    "additives": [
      { "name": "citric acid", "rate": "1 % of fats", "goes_into": "lye",
        "contains_acid": { "acid": "citric acid, anhydrous", "share": "100 %" } },
      { "name": "goat milk", "rate": "5 % of fats", "goes_into": "batter",
        "contains_fat": { "fat": "coconut", "share": "4 %" } } ],
    "colours": [
      { "name": "blue", "rate": "5 g/kg of fats",
        "dispersed_in": { "fat": "olive", "oil_per_colour": 2, "from": "extra" } } ] })",
                                               "everything.formula.json"));
}

Ingredient& first(Weighing& weighing, Role role) {
  return *std::find_if(weighing.ingredients.begin(), weighing.ingredients.end(),
                       [&](const Ingredient& i) { return i.role == role; });
}

}  // namespace

TEST_CASE("a sound weighing passes the gate, with acid, milk, extra oil and both alkalis",
          "[service][law]") {
  const auto formula = rich_formula();
  rc::prop("planning and gate agree at every size", [&] {
    const Mass batter = *rc::gen::inRange(200, 20'000) * gram;
    service::pass_lye_gate(formula, weighing_of(formula, batter, bench));
  });
}

TEST_CASE("the shares of one pot pass a gate of their own, in grams and in ounces",
          "[service][law]") {
  const auto formula = rich_formula();
  rc::prop("planning and gate agree on scales of either unit", [&] {
    const Mass unit = *rc::gen::element(gram, 0.05 * ounce);
    const Scales scales = {.large = {unit, 5 * kilogram}, .fine = {unit / 10, 500 * gram}};
    const Weighing one = weighing_of(formula, *rc::gen::inRange(400, 20'000) * gram, scales);
    const Weighing two = weighing_of(formula, *rc::gen::inRange(400, 20'000) * gram, scales);
    service::pass_lye_gate(formula, one);
    const std::vector<PotBatter> batters{{formula, one}, {formula, two}};
    const Place where{"test.run.json", "/lye_pot"};
    const LyePot pot = lye_pot(batters, scales, {where, {}});
    service::pass_pot_gate(batters, pot, where);

    LyePot spoilt = pot;  // a tenth more lye for one than it asks for
    spoilt.shares[1].lye *= 1.1;
    RC_ASSERT_THROWS(service::pass_pot_gate(batters, spoilt, where));
  });
}

TEST_CASE("a weight spoilt after planning does not pass the gate", "[service]") {
  const auto formula = rich_formula();
  const Weighing sound = weighing_of(formula, 1000 * gram, bench);

  Weighing heavy = sound;  // 1.3 times the alkali: lye-heavy, never shown
  first(heavy, Role::alkali).weighed *= 1.3;
  CHECK_THROWS_WITH(service::pass_lye_gate(formula, heavy), Contains("lye-heavy"));

  Weighing light = sound;  // half the alkali: soft soap, a fault of ours
  first(light, Role::alkali).weighed *= 0.5;
  CHECK_THROWS_AS(service::pass_lye_gate(formula, light), std::logic_error);

  Weighing short_sum = sound;
  short_sum.batter += 1 * gram;
  CHECK_THROWS_AS(service::pass_lye_gate(formula, short_sum), std::logic_error);

  Weighing no_number = sound;
  first(no_number, Role::fat).weighed *= std::nan("");
  CHECK_THROWS(service::pass_lye_gate(formula, no_number));
}
