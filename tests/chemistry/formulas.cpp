#include "formulas.h"

#include "chemistry/formula_file.h"
#include "chemistry/lye_need.h"
#include "chemistry/proportions.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

namespace brimwright::chemistry::test {

std::string sound_formula() {
  return R"({
  "$schema": "formula.schema.json",
  "schema": "brimwright.formula/2",
  "name": "Test base",
  "note": "for tests",
  "fats": [
    { "fat": "olive", "share": "60 %", "saponification_value": 190 },
    { "fat": "coconut", "share": "40 %", "lot": "7" }
  ],
  "superfat": "5 %",
  "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %", "purity_range": ["98 %", "100 %"] } ],
  "water": { "lye_strength": "33 %" },
  "pour_temperature": "38 °C",
  "additives": [
    { "name": "goat milk", "rate": "3 % of batter", "density": "1.03 g/ml", "goes_into": "batter",
      "contains_fat": { "fat": "tallow", "share": "4 %" } },
    { "name": "citric acid", "rate": "10 g/kg of fats", "goes_into": "lye",
      "contains_acid": { "acid": "citric acid, anhydrous", "share": "100 %" } },
    { "name": "kaolin", "rate": "1 tsp/lb of fats", "bulk_density": "0.4 g/ml", "goes_into": "fats" }
  ],
  "fragrances": [ { "name": "lemon balm", "rate": "2 % of fats", "limit": "3 % of batter" } ],
  "colours": [ { "name": "mica", "rate": "4 g/kg of fats",
                 "dispersed_in": { "fat": "olive", "oil_per_colour": 2.5, "from": "formula" } } ],
  "measured_density": "1.02 g/ml",
  "cure": "35 days",
  "water_lost_in_cure": "85 %"
})";
}

std::string with(const std::string& text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  INFO("looking for " << from);
  REQUIRE(at != std::string::npos);
  return text.substr(0, at) + to + text.substr(at + from.size());
}

std::string with_only(const std::string& list, const std::string& entry) {
  const std::string text = sound_formula();
  const auto begin = text.find("\"additives\"");
  const auto end = text.find("\"measured_density\"");
  return text.substr(0, begin) + "\"" + list + "\": [ " + entry + " ],\n  " + text.substr(end);
}

Formula read(const std::string& text) {
  return read_formula(Fields::parse(text, "test.formula.json"));
}

Formula plain_olive() {
  const auto sv = SaponificationValue::mg_koh_per_g(190);
  Formula formula;
  formula.file = "test.formula.json";
  formula.name = "Plain olive";
  formula.fats = {{*find_fat("olive"), whole, {sv, sv, sv}, true, ""}};
  formula.alkalis = {{Alkali::sodium_hydroxide, whole, whole, whole, whole}};
  formula.water = WaterToAlkali{2};
  formula.pour_temperature = Temperature::in_celsius(40);
  return formula;
}

namespace {

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

Fat any_fat() { return *rc::gen::elementOf(shipped_fats()); }

std::vector<FormulaFat> any_fats() {
  std::vector<FormulaFat> fats;
  const auto weights =
      *rc::gen::container<std::vector<int>>(*rc::gen::inRange(1, 7), rc::gen::inRange(1, 100));
  double sum = 0;
  for (const int weight : weights) sum += weight;
  for (const int weight : weights) {
    const Fat fat = any_fat();
    fats.push_back({fat, Share::of_one(weight / sum), fat.saponification, false, ""});
  }
  return fats;
}

std::vector<FormulaAlkali> any_alkalis() {
  const auto one = [](Alkali alkali, Share share) {
    const double purity = between(0.85, 1);
    return FormulaAlkali{alkali, share, Share::of_one(purity),
                         Share::of_one(purity - between(0, 0.05)),
                         Share::of_one(purity + (1 - purity) * between(0, 1))};
  };
  const Share koh = Share::of_one(between(0, 1));
  if (koh == Share()) return {one(Alkali::sodium_hydroxide, whole)};
  if (koh == whole) return {one(Alkali::potassium_hydroxide, whole)};
  return {one(Alkali::sodium_hydroxide, whole - koh), one(Alkali::potassium_hydroxide, koh)};
}

WaterAmount any_water() {
  switch (*rc::gen::inRange(0, 3)) {
    case 0:
      return LyeStrength{Share::of_one(between(0.15, 0.5))};
    case 1:
      return WaterToAlkali{between(1, 5)};
    default:
      return WaterOfFats{Share::of_one(between(0.2, 0.5))};
  }
}

Rate any_rate() {
  const RateBasis of = *rc::gen::element(RateBasis::fats, RateBasis::batter);
  if (*rc::gen::arbitrary<bool>()) return {Share::of_one(between(0.001, 0.1)), of};
  return {between(0.1, 3) * (us_teaspoon / pound), of};
}

Additive any_additive(int number) {
  Additive additive;
  additive.name = "additive " + std::to_string(number);
  additive.kind =
      *rc::gen::element(AdditiveKind::additive, AdditiveKind::fragrance, AdditiveKind::colour);
  additive.rate = any_rate();
  additive.bulk_density = between(0.2, 1.2) * gram_per_millilitre;
  if (*rc::gen::arbitrary<bool>()) additive.density = between(0.8, 4.2) * gram_per_millilitre;
  if (*rc::gen::arbitrary<bool>())
    additive.contains_fat = ContainedFat{any_fat(), Share::of_one(between(0.01, 0.4))};
  if (*rc::gen::arbitrary<bool>())
    additive.contains_acid =
        ContainedAcid{"an acid", Share::of_one(between(0.01, 0.5)), between(0.2, 1)};
  if (additive.kind == AdditiveKind::colour)
    additive.dispersal = Dispersal{any_fat(), between(0.5, 4), *rc::gen::arbitrary<bool>()};
  return additive;
}

}  // namespace

Formula any_formula() {
  Formula formula;
  formula.file = "any.formula.json";
  formula.name = "Any";
  formula.fats = any_fats();
  formula.superfat = Share::of_one(between(0, 0.3));
  formula.alkalis = any_alkalis();
  formula.water = any_water();
  const int additives = *rc::gen::inRange(0, 5);
  for (int i = 0; i < additives; ++i) formula.additives.push_back(any_additive(i));
  formula.pour_temperature = Temperature::in_celsius(between(20, 60));
  return formula;
}

Weighing weighing_of(const Formula& formula, Mass all_fats, Mass step) {
  const Proportions p = proportions(formula);
  std::vector<Mass> fats, additives;
  for (const double f : p.fats) fats.push_back(f * all_fats);
  for (const double a : p.additives) additives.push_back(a * all_fats);
  const auto extra_oils = extra_oils_for(formula, additives);
  const auto alkalis = alkalis_for(formula, fats, extra_oils, additives);

  Weighing w;
  for (std::size_t j = 0; j < fats.size(); ++j)
    w.fats.push_back({formula.fats[j].fat.name, formula.fats[j].saponification, fats[j], step});
  for (std::size_t i = 0; i < additives.size(); ++i) {
    const Additive& a = formula.additives[i];
    if (a.dispersal)
      w.fats.push_back(
          {a.dispersal->oil.name, a.dispersal->oil.saponification, extra_oils[i], step});
    if (a.contains_fat)
      w.fats.push_back({a.name, a.contains_fat->fat.saponification,
                        additives[i] * a.contains_fat->share.of_one(), step});
    if (a.contains_acid)
      w.acids.push_back({a.name, a.contains_acid->share.of_one() * a.contains_acid->koh_g_per_g,
                         additives[i], step});
  }
  for (std::size_t k = 0; k < alkalis.size(); ++k) {
    const FormulaAlkali& a = formula.alkalis[k];
    w.alkalis.push_back({a.alkali, a.purity, a.purity_low, a.purity_high, alkalis[k], step});
  }
  return w;
}

}  // namespace brimwright::chemistry::test
