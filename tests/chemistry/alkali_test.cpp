#include "chemistry/alkali.h"

#include "chemistry/acids.h"
#include "chemistry/alkali_data.h"
#include "chemistry/fats.h"
#include "chemistry/lye_need.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <string>
#include <tuple>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::plain_olive;

// IUPAC 2021 abridged standard atomic weights; sodium and potassium in full.
constexpr double H = 1.008, C = 12.011, O = 15.999, Na = 22.98976928, K = 39.0983;
constexpr double naoh = Na + O + H, koh = K + O + H;

TEST_CASE("a triglyceride takes three alkali for each molecule", "[chemistry]") {
  // Published theoretical values 3 * 56105.3 / M; tolerance: half a unit in their last digit.
  const auto [name, sv, molar_mass] = GENERATE_COPY(table<std::string, double, double>({
      {"tripalmitin C51H98O6", 208.48, 51 * C + 98 * H + 6 * O},
      {"tristearin C57H110O6", 188.80, 57 * C + 110 * H + 6 * O},
      {"triolein C57H104O6", 190.09, 57 * C + 104 * H + 6 * O},
  }));
  CAPTURE(name);
  const auto value = SaponificationValue::mg_koh_per_g(sv);
  const Mass one_mole = molar_mass * gram;
  CHECK_THAT(alkali_for(Alkali::potassium_hydroxide, one_mole, value) / gram,
             WithinRel(3 * koh, 0.005 / sv));
  CHECK_THAT(alkali_for(Alkali::sodium_hydroxide, one_mole, value) / gram,
             WithinRel(3 * naoh, 0.005 / sv));
}

TEST_CASE("one gram of KOH does the work of 0.71289 g of NaOH", "[chemistry]") {
  // 40 / 56.1 = 0.713, the factor of every textbook; here from the atomic weights.
  CHECK_THAT(molar_mass_g_per_mol(Alkali::sodium_hydroxide), WithinAbs(naoh, 1e-9));
  CHECK_THAT(molar_mass_g_per_mol(Alkali::potassium_hydroxide), WithinAbs(koh, 1e-9));
  const auto neutralised = SaponificationValue::mg_koh_per_g(1000);
  CHECK_THAT(alkali_for(Alkali::sodium_hydroxide, gram, neutralised) / gram,
             WithinAbs(0.71289, 0.000005));
}

TEST_CASE("textbook exercises come out", "[chemistry]") {
  // Answers worked on paper from the definition of the saponification value (ISO 3657).
  const auto alkali = [](Alkali which, double fat_g, double sv) {
    return alkali_for(which, fat_g * gram, SaponificationValue::mg_koh_per_g(sv)) / gram;
  };
  // 1000 g at 190: 190 g KOH, x 39.997 / 56.105.
  CHECK_THAT(alkali(Alkali::sodium_hydroxide, 1000, 190), WithinAbs(135.45, 0.005));
  // 100 g of tristearin, 3 x 39.997 / 891.501 x 100.
  CHECK_THAT(alkali(Alkali::sodium_hydroxide, 100, 188.80), WithinAbs(13.459, 0.0005));
}

TEST_CASE("KOH of 90 % takes a tenth more weighing", "[chemistry]") {
  // 500 g at 252 mg/g need 126 g of pure KOH; / 0.90 = 140.0 g.
  Formula formula = plain_olive();
  const auto sv = SaponificationValue::mg_koh_per_g(252);
  formula.fats[0].saponification = {sv, sv, sv};
  formula.alkalis = {{Alkali::potassium_hydroxide, whole, 90 * percent, whole, whole}};
  const auto alkalis = alkalis_for(formula, {500 * gram}, {}, {});
  CHECK_THAT(alkalis.at(0) / gram, WithinAbs(140.0, 1e-9));
}

TEST_CASE("a superfat of 5 % is 95 % of the lye for all fats together", "[chemistry]") {
  // 600 g at 190 and 400 g at 256 mg/g: (114 + 102.4) g KOH x 0.71289 x 0.95 = 146.555 g NaOH.
  Formula formula = plain_olive();
  const auto sv = SaponificationValue::mg_koh_per_g(256);
  formula.fats.push_back({*find_fat("coconut"), 40 * percent, {sv, sv, sv}, true, ""});
  formula.superfat = 5 * percent;
  const auto alkalis = alkalis_for(formula, {600 * gram, 400 * gram}, {}, {});
  CHECK_THAT(alkalis.at(0) / gram, WithinAbs(146.555, 0.001));
}

TEST_CASE("acids use up the alkali that their protons call for", "[chemistry]") {
  // Protons x M(KOH) / M(acid), formulas and pKa from any handbook; 1e-5: the table's last digit.
  const auto [name, protons, molar_mass] = GENERATE_COPY(table<std::string, int, double>({
      {"citric acid, anhydrous", 3, 6 * C + 8 * H + 7 * O},
      {"citric acid monohydrate", 3, 6 * C + 10 * H + 8 * O},
      {"lactic acid (100 %)", 1, 3 * C + 6 * H + 3 * O},
      {"acetic acid (100 %)", 1, 2 * C + 4 * H + 2 * O},
      {"ascorbic acid", 1, 6 * C + 8 * H + 6 * O},
      {"malic acid", 2, 4 * C + 6 * H + 5 * O},
      {"tartaric acid", 2, 4 * C + 6 * H + 6 * O},
      // Soap's pH, about 10, takes no phenol's proton (13.6) and not phosphoric acid's third
      // (12.3).
      {"potassium hydrogen tartrate", 1, 4 * C + 5 * H + 6 * O + 39.098},
      {"oxalic acid, anhydrous", 2, 2 * C + 2 * H + 4 * O},
      {"oxalic acid dihydrate", 2, 2 * C + 6 * H + 6 * O},
      {"glycolic acid (100 %)", 1, 2 * C + 4 * H + 3 * O},
      {"salicylic acid", 1, 7 * C + 6 * H + 3 * O},
      {"benzoic acid", 1, 7 * C + 6 * H + 2 * O},
      {"phosphoric acid (100 %)", 2, 3 * H + 30.974 + 4 * O},
      {"sodium bicarbonate", 1, 22.990 + H + C + 3 * O},
      {"potassium bicarbonate", 1, 39.098 + H + C + 3 * O},
  }));
  CAPTURE(name);
  const Acid* acid = find_acid(name);
  REQUIRE(acid != nullptr);
  CHECK_THAT(acid->koh_g_per_g, WithinAbs(protons * koh / molar_mass, 1e-5));
}

TEST_CASE("baking soda takes up 0.476 g of NaOH for a gram", "[chemistry]") {
  // One NaOH for each: 39.997 / 84.007 g/mol.
  const double koh_per_gram = find_acid("sodium bicarbonate")->koh_g_per_g;
  CHECK_THAT(koh_per_gram * 39.997 / koh, WithinAbs(0.4761, 1e-4));
}

TEST_CASE("vinegar of 5 % counts as 5 % of acetic acid", "[chemistry]") {
  const Acid* vinegar = find_acid("vinegar, 5 g acetic acid per 100 g");
  REQUIRE(vinegar != nullptr);
  CHECK_THAT(vinegar->koh_g_per_g, WithinAbs(0.05 * koh / (2 * C + 4 * H + 2 * O), 1e-5));
}

TEST_CASE("fatty acids are fats and no acids to add", "[chemistry]") {
  for (const auto* id : {"stearic_acid", "lauric_acid", "oleic_acid"})
    CHECK(find_fat(id) != nullptr);
  for (const auto* name : {"stearic acid", "lauric acid", "oleic acid"})
    CHECK(find_acid(name) == nullptr);
}

}  // namespace
}  // namespace brimwright::chemistry
