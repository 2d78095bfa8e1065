#include "chemistry/lye_solution.h"

#include "chemistry/batter_density.h"
#include "chemistry/fat_blend.h"
#include "chemistry/heat.h"
#include "chemistry/proportions.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <string>

namespace brimwright::chemistry::test {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

StandingSolution solution_of(const std::string& strength, const std::string& more = "") {
  const std::string text = R"({ "alkali": "NaOH", "strength": ")" + strength +
                           R"(", "strength_range": ["28 %", ")" + strength +
                           R"("], "kept_at": "20 °C")" + more + " }";
  return read_lye_solution(Fields::parse(text, "studio.json"), "Jug");
}

LyeCharge charge(const ChargedAlkali& alkali, Mass water) {
  return {{alkali}, water, Mass(), Mass()};
}

TEST_CASE("a batter of a solution and extra water is that of pure alkali and all the water",
          "[chemistry]") {
  // The same atoms in the pot: mass by mass, and so volume by volume.
  Formula dry = plain_olive();
  Formula wet = dry;
  take_solution(wet, solution_of("30 %"), {});
  const Proportions of_dry = proportions(dry), of_wet = proportions(wet);
  CHECK_THAT(of_wet.batter, WithinRel(of_dry.batter, 1e-12));
  CHECK_THAT(of_wet.pure_alkali, WithinRel(of_dry.pure_alkali, 1e-12));
  CHECK_THAT(of_wet.water + of_wet.water_in_solutions, WithinRel(of_dry.water, 1e-12));
  // 30 g of alkali in 100 g of solution bring 70 g of water.
  CHECK_THAT(of_wet.alkalis[0], WithinRel(of_wet.pure_alkali / 0.3, 1e-12));
  CHECK_THAT(of_wet.water_in_solutions, WithinRel(of_wet.pure_alkali / 0.3 * 0.7, 1e-12));
  CHECK_THAT(batter_density(wet, of_wet).computed / gram_per_millilitre,
             WithinRel(batter_density(dry, of_dry).computed / gram_per_millilitre, 1e-12));
}

TEST_CASE("diluting what was dissolved before ends as warm as dissolving all at once",
          "[chemistry][law]") {
  // Hess's law: only beginning and end count. Neither loses heat on the way.
  const auto at = Temperature::in_celsius(20);
  const Mass alkali = 100 * gram, first = 150 * gram, then = 100 * gram;
  const LyeCharge stock = charge({Alkali::sodium_hydroxide, alkali}, first);
  const auto hot = peak_of(stock, at, at);
  const LyeCharge all = charge({Alkali::sodium_hydroxide, alkali}, first + then);
  const LyeCharge diluted = charge({Alkali::sodium_hydroxide, alkali, first, hot.peak}, then);
  CHECK_THAT(peak_of(diluted, at, at).peak.celsius(),
             WithinAbs(peak_of(all, at, at).peak.celsius(), 1e-6));
  CHECK_THAT(diluted.strength().of_one(), WithinRel(100.0 / 350, 1e-12));
  CHECK(diluted.mass() == all.mass());
}

TEST_CASE("a cold solution warms by its heat of dilution", "[chemistry]") {
  // Integral heats in 3 and in 5 mol of water for a mole of NaOH lie 14.0 and 5.13 kJ/mol below
  // that at infinite dilution (Felder & Rousseau, Table B.11, from memory; each 0.6 off at most, as
  // in heat_test): 8.87 kJ come free, in 130 g of lye of 3.6 kJ/(kg K) (Laliberte and Olsson, 30
  // %).
  const auto at = Temperature::in_celsius(25);
  const Mass water = 18.015 * gram;
  const LyeCharge diluted =
      charge({Alkali::sodium_hydroxide, 39.997 * gram, 3 * water, at}, 2 * water);
  CHECK_THAT(peak_of(diluted, at, at).peak.celsius() - 25,
             WithinAbs(8.87 / (diluted.mass() / kilogram * 3.6), 1.2 / 0.47));
  CHECK(knows_peak_of(diluted));
  // No heats of KOH by strength are known here.
  const LyeCharge of_koh =
      charge({Alkali::potassium_hydroxide, 56 * gram, 3 * water, at}, 2 * water);
  CHECK_FALSE(knows_peak_of(of_koh));
}

TEST_CASE("a solution weaker than the lye, or of another alkali, is not taken", "[chemistry]") {
  Formula formula = plain_olive();  // water 2 : 1 is lye of 33.3 %
  take_solution(formula, solution_of("33 %"), {});
  CHECK_THROWS_AS(refuse_flooded_lye(formula, {}), UserError);
  Formula strong_enough = plain_olive();
  take_solution(strong_enough, solution_of("34 %"), {});
  CHECK_NOTHROW(refuse_flooded_lye(strong_enough, {}));
  CHECK_THROWS_AS(take_solution(strong_enough, solution_of("34 %"), {}), UserError);  // twice
  CHECK(name_of(strong_enough.alkalis[0]) == "NaOH solution, 34 % strong (Jug)");
}

TEST_CASE("blend and what is left beside it are the formula's fats", "[chemistry][law]") {
  const std::string text = sound_formula();
  Formula formula = read(text);
  StandingBlend standing{"Half", {}};
  const double of_two = formula.fats[0].share.of_one() + formula.fats[1].share.of_one();
  for (std::size_t j = 0; j < 2; ++j)
    standing.parts.push_back(
        {formula.fats[j].fat.id, Share::of_one(formula.fats[j].share.of_one() / of_two), {}});
  take_blend(formula, standing, 20 * percent, {});
  for (std::size_t j = 0; j < formula.fats.size(); ++j)
    CHECK_THAT(outside_blend(formula, j).of_one() +
                   formula.blend->of_fats.of_one() * formula.blend->parts[j].of_one(),
               WithinAbs(formula.fats[j].share.of_one(), 1e-12));
  CHECK_THROWS_AS(take_blend(formula, standing, 100 * percent, {}), UserError);
}

}  // namespace
}  // namespace brimwright::chemistry::test
