
#include "chemistry/batter_density.h"
#include "chemistry/fat_density.h"
#include "chemistry/fats.h"
#include "chemistry/lye_need.h"
#include "chemistry/proportions.h"
#include "chemistry/rate_cautions.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <numeric>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::any_formula;
using test::plain_olive;

double sum(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

Additive additive_at(Rate rate) {
  Additive additive;
  additive.name = "additive";
  additive.rate = rate;
  return additive;
}

bool any_says(const std::vector<Remark>& remarks, const std::string& part) {
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const Remark& r) { return r.text.find(part) != std::string::npos; });
}

// 190 mg KOH/g x 39.99677 / 56.1053 (IUPAC 2021 atomic weights), per gram of fat.
constexpr double naoh_for_olive = 0.1354487;

TEST_CASE("a plain formula is what one works out on paper", "[chemistry]") {
  Formula formula = plain_olive();
  formula.superfat = 5 * percent;
  formula.alkalis[0].purity = 98 * percent;
  const Proportions p = proportions(formula);
  const double pure = naoh_for_olive * 0.95;
  CHECK_THAT(p.pure_alkali, WithinRel(pure, 1e-6));
  CHECK_THAT(p.alkalis.at(0), WithinRel(pure / 0.98, 1e-6));
  CHECK_THAT(p.water, WithinRel(2 * pure, 1e-6));  // counts pure alkali
  CHECK_THAT(p.batter, WithinRel(1 + pure / 0.98 + 2 * pure, 1e-6));
}

TEST_CASE("water stated in one way is told in all three", "[chemistry]") {
  // 1 part of alkali to 2 of water: a third of the lye; 2 x 0.13545 of the fats.
  Formula formula = plain_olive();
  SECTION("as water to alkali") { formula.water = WaterToAlkali{2}; }
  SECTION("as lye strength") { formula.water = LyeStrength{Share::of_one(1.0 / 3)}; }
  SECTION("as a share of the fats") {
    formula.water = WaterOfFats{Share::of_one(2 * naoh_for_olive)};
  }
  const Proportions p = proportions(formula);
  CHECK_THAT(p.lye_strength.in_percent(), WithinAbs(33.3333, 0.0002));
  CHECK_THAT(p.water_to_alkali, WithinRel(2.0, 1e-5));
  CHECK_THAT(p.water_of_fats.in_percent(), WithinAbs(27.0897, 0.0002));
}

TEST_CASE("NaOH and KOH share the saponifying by equivalents", "[chemistry]") {
  // Half each of 190 mg KOH/g: 0.095 g KOH, and 0.095 x 0.712888 g NaOH, each by its own purity.
  Formula formula = plain_olive();
  formula.alkalis = {{Alkali::sodium_hydroxide, 50 * percent, 98 * percent, whole, whole},
                     {Alkali::potassium_hydroxide, 50 * percent, 90 * percent, whole, whole}};
  const Proportions p = proportions(formula);
  CHECK_THAT(p.alkalis.at(0), WithinRel(0.095 * 0.712888 / 0.98, 1e-6));
  CHECK_THAT(p.alkalis.at(1), WithinRel(0.095 / 0.90, 1e-9));
}

TEST_CASE("citric acid calls for alkali of its own, without superfat", "[chemistry]") {
  // 2 % of anhydrous citric acid: 3 x 39.99677 / 192.123 = 0.62455 g NaOH for each gram.
  Formula formula = plain_olive();
  formula.superfat = 5 * percent;
  formula.additives = {additive_at({2 * percent, RateBasis::fats})};
  formula.additives[0].contains_acid = ContainedAcid{"citric acid, anhydrous", whole, 0.87608};
  CHECK_THAT(proportions(formula).pure_alkali,
             WithinRel(naoh_for_olive * 0.95 + 0.02 * 0.62455, 1e-5));
}

TEST_CASE("the fat in milk is fat", "[chemistry]") {
  // 10 % of a milk with 20 % of a fat at 255.8 mg/g, at the formula's superfat: coconut, the middle
  // of 265 (CXS 210-1999) and the 246.6 that its fatty acids may ask for.
  Formula formula = plain_olive();
  formula.superfat = 5 * percent;
  formula.additives = {additive_at({10 * percent, RateBasis::fats})};
  formula.additives[0].contains_fat = ContainedFat{*find_fat("coconut"), 20 * percent};
  CHECK_THAT(proportions(formula).pure_alkali,
             WithinRel((naoh_for_olive + 0.1 * 0.2 * 0.2558 * 0.712888) * 0.95, 1e-6));
}

TEST_CASE("oil that disperses a colour is taken out of the formula, or counted", "[chemistry]") {
  // 1 % of colour in three times its weight of oil: 3 % of the fats.
  Formula formula = plain_olive();
  formula.additives = {additive_at({1 * percent, RateBasis::fats})};
  formula.additives[0].kind = AdditiveKind::colour;
  SECTION("set aside from the formula: no lye more, no mass more") {
    formula.additives[0].dispersal = Dispersal{*find_fat("olive"), 3, true};
    const Proportions p = proportions(formula);
    CHECK_THAT(p.set_aside.at(0), WithinRel(0.03, 1e-12));
    CHECK(p.extra_oil.at(0) == 0);
    CHECK_THAT(p.pure_alkali, WithinRel(naoh_for_olive, 1e-6));
    CHECK_THAT(p.batter, WithinRel(1.01 + 3 * naoh_for_olive, 1e-6));
  }
  SECTION("extra: it joins the batter and takes its lye, castor's at 181.5 mg/g") {
    formula.additives[0].dispersal = Dispersal{*find_fat("castor"), 3, false};
    const Proportions p = proportions(formula);
    CHECK(p.set_aside.at(0) == 0);
    CHECK_THAT(p.extra_oil.at(0), WithinRel(0.03, 1e-12));
    CHECK_THAT(p.pure_alkali, WithinRel(naoh_for_olive + 0.03 * 0.1815 * 0.712888, 1e-6));
  }
}

TEST_CASE("a teaspoon for each pound becomes grams by the powder's bulk density", "[chemistry]") {
  // US teaspoon 4.92892 ml, pound 453.59237 g (NIST SP 811); at 0.4 g/ml: 1.97157 g/lb = 0.43466 %.
  Formula formula = plain_olive();
  formula.additives = {additive_at({us_teaspoon / pound, RateBasis::fats})};
  formula.additives[0].bulk_density = 0.4 * gram_per_millilitre;
  CHECK_THAT(proportions(formula).additives.at(0), WithinRel(0.0043466, 1e-5));
}

TEST_CASE("3 % of the batter is 3 % of all that is in the pot", "[chemistry][law]") {
  rc::prop("each additive's rate holds on the basis that it names", [] {
    const Formula formula = any_formula();
    const Proportions p = proportions(formula);
    for (std::size_t i = 0; i < p.additives.size(); ++i) {
      const Additive& a = formula.additives[i];
      const double basis = a.rate.of == RateBasis::batter ? p.batter : 1;
      const auto* share = std::get_if<Share>(&a.rate.amount);
      const double rate = share != nullptr
                              ? share->of_one()
                              : (std::get<SpecificVolume>(a.rate.amount) * *a.bulk_density).base();
      RC_ASSERT(std::abs(p.additives[i] - rate * basis) < 1e-12);
    }
  });
}

TEST_CASE("all that goes in is the batter", "[chemistry][law]") {
  rc::prop("the parts sum to the batter", [] {
    const Proportions p = proportions(any_formula());
    const double parts =
        sum(p.fats) + sum(p.alkalis) + sum(p.additives) + sum(p.extra_oil) + p.water;
    RC_ASSERT(std::abs(parts - p.batter) < 1e-12 * p.batter);
  });
}

TEST_CASE("more superfat never means more alkali", "[chemistry][law]") {
  rc::prop("alkali falls as superfat rises", [] {
    Formula formula = any_formula();
    const double before = proportions(formula).pure_alkali;
    formula.superfat = formula.superfat + *rc::gen::inRange(1, 100) * 0.1 * percent;
    RC_ASSERT(proportions(formula).pure_alkali < before);
  });
}

TEST_CASE("twice the fats take twice the lye", "[chemistry][law]") {
  rc::prop("alkalis and water are in proportion to what they go with", [] {
    const Formula formula = any_formula();
    const Proportions p = proportions(formula);
    const double size = *rc::gen::inRange(1, 50000);
    const auto scaled = [&](const std::vector<double>& parts) {
      std::vector<Mass> masses;
      for (const double part : parts) masses.push_back(part * size * gram);
      return masses;
    };
    const auto additives = scaled(p.additives);
    const auto alkalis =
        alkalis_for(formula, scaled(p.fats), extra_oils_for(formula, additives), additives);
    for (std::size_t k = 0; k < alkalis.size(); ++k)
      RC_ASSERT(std::abs(alkalis[k] / gram / size - p.alkalis[k]) < 1e-12);
    RC_ASSERT(std::abs(water_for(formula, alkalis, size * gram) / gram / size - p.water) < 1e-12);
  });
}

TEST_CASE("additives that leave no batter are refused", "[chemistry]") {
  Formula formula = plain_olive();
  formula.additives = {additive_at({60 * percent, RateBasis::batter}),
                       additive_at({45 * percent, RateBasis::batter})};
  CHECK_THROWS_WITH(proportions(formula), Contains("leave no room for the batter"));
  formula.additives.pop_back();
  CHECK_NOTHROW(proportions(formula));
  formula.additives[0].rate.amount = 80 * percent;
  CHECK_THROWS_WITH(proportions(formula), Contains("80 % of the batter"));
}

TEST_CASE("plain olive batter weighs what its oil and its lye weigh", "[chemistry]") {
  // Volumes added on paper for 40 degC: olive at 0.8986 g/ml (slope of Rodenbush 1999) and lye of a
  // third NaOH at 1.3486 g/ml (Olsson 1997); 0.3 % for the lye model's own deviation.
  const Formula formula = plain_olive();
  const double lye = 3 * naoh_for_olive;
  const double expected = (1 + lye) / (1 / 0.8986 + lye / 1.3486);
  const auto density = batter_density(formula, proportions(formula));
  CHECK_THAT(density.computed / gram_per_millilitre, WithinRel(expected, 0.003));
  CHECK(density.used == density.computed);
  CHECK(density.remarks.empty());
}

TEST_CASE("the bench rule of 0.40 oz of oils for a cubic inch of mould holds", "[chemistry]") {
  // Common practice, no source. About 2 % around a lye of a third; the stronger the lye, the more
  // oils.
  const auto [strength, tolerance] =
      GENERATE(table<double, double>({{0.30, 0.02}, {0.33, 0.02}, {0.36, 0.04}}));
  CAPTURE(strength);
  Formula formula = plain_olive();
  const Fat& coconut = *find_fat("coconut");
  formula.fats[0].share = 70 * percent;
  formula.fats.push_back({coconut, 30 * percent, coconut.saponification, false, ""});
  formula.superfat = 5 * percent;
  formula.water = LyeStrength{Share::of_one(strength)};
  const Proportions p = proportions(formula);
  const Mass oils = cubic_inch * batter_density(formula, p).computed / p.batter;
  CHECK_THAT(oils / ounce, WithinRel(0.40, tolerance));
}

TEST_CASE("lye of both alkalis weighs between the lyes of each", "[chemistry][law]") {
  // At one strength and the same mass, KOH lye is the lighter one (tables of both in lye_test.cpp).
  Formula formula = plain_olive();
  const auto computed = [&](double koh_share) {
    formula.alkalis.clear();
    if (koh_share < 1)
      formula.alkalis.push_back(
          {Alkali::sodium_hydroxide, Share::of_one(1 - koh_share), whole, whole, whole});
    if (koh_share > 0)
      formula.alkalis.push_back(
          {Alkali::potassium_hydroxide, Share::of_one(koh_share), whole, whole, whole});
    const Proportions p = proportions(formula);
    const double oil = 1 / (density_of(formula.fats[0].fat, formula.pour_temperature).density /
                            gram_per_millilitre);
    const double all = p.batter * gram / batter_density(formula, p).computed / millilitre;
    return (p.batter - 1) / (all - oil);  // the lye's own density
  };
  CHECK(computed(0) > computed(0.3));
  CHECK(computed(0.3) > computed(0.7));
  CHECK(computed(0.7) > computed(1));
}

TEST_CASE("the water in impure KOH took up as little room as KOH", "[chemistry]") {
  // Flakes of 85 % KOH and 15 % water (USP: at most 3.5 % of it is carbonate) make the same lye as
  // pure KOH with that water beside it. 100 g of them in 112.5 g of water are 40 % KOH, which
  // weighs 1.400 g/ml at 18 degC (table of the Cracow University of Technology); tolerance: the
  // model's own deviation from it. As KOH, those 15 g would make it 1.455.
  Formula impure = plain_olive();
  impure.pour_temperature = Temperature::in_celsius(18);
  impure.alkalis = {{Alkali::potassium_hydroxide, whole, 85 * percent, 85 * percent, 85 * percent}};
  Formula pure = impure;
  pure.alkalis = {{Alkali::potassium_hydroxide, whole, whole, whole, whole}};
  const Volume lye = lye_volume(impure, {100 * gram}, 112.5 * gram);
  CHECK_THAT(lye / lye_volume(pure, {85 * gram}, 127.5 * gram), WithinRel(1.0, 1e-12));
  CHECK_THAT(212.5 * gram / lye / gram_per_millilitre, WithinRel(1.400, 0.002));
}

TEST_CASE("what is impure in NaOH is taken as dense as NaOH", "[chemistry]") {
  // It is carbonate and chloride, hardly water: common practice, no source.
  Formula formula = plain_olive();
  formula.alkalis[0].purity = 98 * percent;
  const Volume lye = lye_volume(formula, {100 * gram}, 200 * gram);
  formula.alkalis[0].purity = whole;
  CHECK_THAT(lye / lye_volume(formula, {100 * gram}, 200 * gram), WithinRel(1.0, 1e-12));
}

TEST_CASE("a heavy additive makes the batter heavier, one like it leaves it", "[chemistry]") {
  Formula formula = plain_olive();
  const Density plain = batter_density(formula, proportions(formula)).computed;
  formula.additives = {additive_at({5 * percent, RateBasis::fats})};
  formula.additives[0].density = plain;
  CHECK_THAT(batter_density(formula, proportions(formula)).computed / plain, WithinAbs(1, 1e-12));
  formula.additives[0].density = 2.6 * gram_per_millilitre;  // a clay mineral
  CHECK(batter_density(formula, proportions(formula)).computed > plain);
}

TEST_CASE("extra dispersing oil takes up room like any oil", "[chemistry]") {
  // Volumes added on paper for 40 degC: 5 % of a colour of 2.6 g/ml in twice its weight of olive
  // oil at 0.8986 g/ml (slope of Rodenbush 1999), all of the oil saponified by lye of a third NaOH
  // at 1.3486 g/ml (Olsson 1997); 0.3 % for the lye model's own deviation. Without the oil's room
  // it is 6 % off.
  Formula formula = plain_olive();
  formula.additives = {additive_at({5 * percent, RateBasis::fats})};
  formula.additives[0].density = 2.6 * gram_per_millilitre;
  formula.additives[0].kind = AdditiveKind::colour;
  Fat olive = *find_fat("olive");
  const auto sv = SaponificationValue::mg_koh_per_g(190);
  olive.saponification = {sv, sv, sv};
  formula.additives[0].dispersal = Dispersal{olive, 2, false};
  const double lye = 3 * naoh_for_olive * 1.1;
  const double expected = (1.1 + lye + 0.05) / (1.1 / 0.8986 + lye / 1.3486 + 0.05 / 2.6);
  CHECK_THAT(batter_density(formula, proportions(formula)).computed / gram_per_millilitre,
             WithinRel(expected, 0.003));
}

TEST_CASE("what the density rests on is said", "[chemistry]") {
  Formula formula = plain_olive();
  const auto remarks = [&] { return batter_density(formula, proportions(formula)).remarks; };
  SECTION("an additive without a density") {
    formula.additives = {additive_at({1 * percent, RateBasis::fats})};
    CHECK(any_says(remarks(), "taken as water's"));
  }
  SECTION("a fat without a published density") {
    formula.fats[0].fat = *find_fat("sal");
    CHECK(any_says(remarks(), "Lund"));
  }
  SECTION("a batter too cold for a fat to stay molten") {
    formula.fats[0].fat = *find_fat("palm");
    CHECK_FALSE(any_says(remarks(), "would set"));  // 40 degC, melts at 33 to 39 (PORAM)
    formula.pour_temperature = Temperature::in_celsius(22);
    CHECK(any_says(remarks(), "Palm oil would set"));
  }
  SECTION("a measured density that agrees is used without a word") {
    formula.measured_density = 1.02 * batter_density(formula, proportions(formula)).computed;
    CHECK(batter_density(formula, proportions(formula)).used == *formula.measured_density);
    CHECK(remarks().empty());
  }
  SECTION("a measured density that does not") {
    formula.measured_density = 0.90 * batter_density(formula, proportions(formula)).computed;
    CHECK(batter_density(formula, proportions(formula)).used == *formula.measured_density);
    CHECK(any_says(remarks(), "10 % below the calculated"));
  }
}

TEST_CASE("a weak lye is wet and a strong one is fast, and both are said", "[chemistry]") {
  // 25 and 40 %: common practice, no source.
  const auto [strength, part] = GENERATE(table<double, std::string>(
      {{0.24, "very wet"}, {0.25, ""}, {0.33, ""}, {0.40, ""}, {0.41, "traces fast"}}));
  CAPTURE(strength);
  Formula formula = plain_olive();
  formula.water = LyeStrength{Share::of_one(strength)};
  const auto cautions = rate_cautions(formula, proportions(formula));
  if (part.empty())
    CHECK(cautions.empty());
  else
    CHECK(any_says(cautions, part));
}

TEST_CASE("a supplier's value far from the published range is doubted", "[chemistry]") {
  Formula formula = plain_olive();
  CHECK(data_doubts(formula, proportions(formula)).empty());
  const auto sv = SaponificationValue::mg_koh_per_g(256);  // coconut's, on the olive's line
  formula.fats[0].saponification = {sv, sv, sv};
  CHECK(any_says(data_doubts(formula, proportions(formula)),
                 "256 mg KOH/g lies above the 184 to 200 mg KOH/g known for Olive oil"));
}

}  // namespace
}  // namespace brimwright::chemistry
