#include "chemistry/saponified.h"

#include "chemistry/acids.h"
#include "chemistry/fats.h"
#include "chemistry/inci.h"
#include "chemistry/inci_data.h"
#include "chemistry/proportions.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

/// `formula` made from `all_fats` of fats, nothing rounded.
Charge charge_of(const Formula& formula, Mass all_fats) {
  const Proportions p = proportions(formula);
  const auto times = [&](const std::vector<double>& shares) {
    std::vector<Mass> masses;
    for (const double share : shares) masses.push_back(share * all_fats);
    return masses;
  };
  return {times(p.fats), times(p.extra_oil), times(p.alkalis), times(p.additives),
          p.water * all_fats};
}

/// A charge of one fat of value `sv` with as much pure NaOH as `naoh`, no water.
Saponified one_fat(const std::string& id, double sv, Mass fat, Mass naoh) {
  Formula formula = test::plain_olive();
  const auto value = SaponificationValue::mg_koh_per_g(sv);
  formula.fats = {{*find_fat(id), whole, {value, value, value}, true, ""}};
  return saponified(formula, {{fat}, {}, {naoh}, {}, Mass()});
}

const InciAmount& named(const std::vector<InciAmount>& list, const std::string& name) {
  for (const auto& amount : list)
    if (amount.name == name) return amount;
  FAIL("no " << name << " in the list");
  return list.front();
}

TEST_CASE("tristearin gives its glycerol and its soap by the book", "[chemistry]") {
  // Stoichiometry alone, IUPAC 2021 atomic weights: C57H110O6 891.501, glycerol 92.094, NaOH
  // 39.997 g/mol; sodium stearate C18H35NaO2 is 306.466 g/mol. 100 g take 13.459 g NaOH and set
  // free 10.330 g glycerol: 103.129 g soap, which is 3 x 306.466 / 891.501 x 100 too.
  const auto soap = one_fat("olive", 3 * 56105.3 / 891.501, 100 * gram, 13.459 * gram);
  CHECK_THAT(soap.glycerol / gram, WithinAbs(10.330, 0.002));
  CHECK_THAT(soap.fats.front().sodium_soap / gram, WithinRel(3 * 306.466 / 891.501 * 100, 1e-4));
  CHECK_THAT(soap.saponified.in_percent(), WithinAbs(100, 0.01));
}

TEST_CASE("a fat with the lye and the glycerol of a textbook gives the textbook's soap",
          "[chemistry]") {
  // A school exercise (Vietnam, grade 12): 8.58 kg of fat take 1.2 kg NaOH and give 0.92 kg
  // glycerol and 8.86 kg of soap. 1.2 kg NaOH are 30 mol, so the fat's value is 196.2 mg/g.
  const double sv = 1200 / 39.99677 * 56.1053 / 8580 * 1000;
  const auto soap = one_fat("olive", sv, 8580 * gram, 1200 * gram);
  CHECK_THAT(soap.fats.front().sodium_soap / kilogram, WithinAbs(8.86, 0.005));
  CHECK_THAT(soap.glycerol / kilogram, WithinAbs(0.92, 0.005));
}

TEST_CASE("a free fatty acid gives water, not glycerol", "[chemistry]") {
  // Stearic acid C18H36O2 284.484 g/mol: one NaOH, one water (18.015), IUPAC 2021.
  const auto soap = one_fat("stearic_acid", 56105.3 / 284.484, 284.484 * gram, 39.997 * gram);
  CHECK_THAT(soap.water / gram, WithinAbs(18.015, 0.002));
  CHECK_THAT(soap.fats.front().sodium_soap / gram, WithinAbs(306.466, 0.005));
  CHECK(soap.glycerol == Mass());
}

TEST_CASE("jojoba's alcohols stay, about half of it", "[chemistry]") {
  // A wax ester of 600 g/mol (jojoba's are C38 to C44, 560 to 645 g/mol) plus one water makes two
  // halves of 309 g/mol each.
  const auto soap = one_fat("jojoba", 56105.3 / 600, 600 * gram, 39.997 * gram);
  CHECK_THAT(soap.wax_alcohols / gram, WithinAbs(309.0, 0.05));
  CHECK(soap.glycerol == Mass());
}

TEST_CASE("beeswax stays listed as the wax, with the alkali that it took", "[chemistry]") {
  // 100 g at 57 mg KOH/g take 5.7 / 56.105 x 39.997 = 4.0635 g NaOH. No jojoba's alcohols, and no
  // name of a soap that nobody knows the amount of.
  Formula formula = test::plain_olive();
  const auto value = SaponificationValue::mg_koh_per_g(57);
  formula.fats = {{*find_fat("beeswax"), whole, {value, value, value}, true, ""}};
  const Charge charge{{100 * gram}, {}, {4.0635 * gram}, {}, Mass()};
  const auto soap = saponified(formula, charge);
  CHECK(soap.wax_alcohols == Mass());
  CHECK(soap.glycerol == Mass());
  CHECK_THAT(soap.total() / charge.total(), WithinAbs(1, 1e-12));
  const auto list = inci_amounts(formula, charge, InciConvention::as_saponified);
  CHECK_THAT(named(list, "Cera Alba").mass / gram, WithinAbs(104.0635, 1e-4));
  for (const auto& amount : list) CHECK(amount.name.find("Sodium B") == std::string::npos);
}

TEST_CASE("citric acid becomes the published weight of sodium citrate", "[chemistry]") {
  // One gram of anhydrous citric acid (192.123 g/mol) gives 258.068 / 192.123 = 1.3433 g of
  // trisodium citrate (IUPAC 2021 atomic weights).
  Formula formula = test::plain_olive();
  formula.superfat = 5 * percent;
  Additive acid;
  acid.name = "citric acid";
  acid.rate = Rate{1 * percent, RateBasis::fats};
  acid.contains_acid = ContainedAcid{"citric acid, anhydrous", whole,
                                     find_acid("citric acid, anhydrous")->koh_g_per_g};
  formula.additives = {acid};
  const auto charge = charge_of(formula, 1000 * gram);
  const auto soap = saponified(formula, charge);
  CHECK_THAT(soap.acids.front().sodium_salt / (10 * gram), WithinAbs(1.3433, 0.0005));
  CHECK_THAT(soap.saponified.in_percent(), WithinAbs(95, 1e-6));  // the acid's lye is extra
  const auto list = inci_amounts(formula, charge, InciConvention::as_saponified);
  CHECK_THAT(named(list, "Sodium Citrate").mass / gram, WithinAbs(13.433, 0.005));
}

TEST_CASE("every acid that is known has its names and its strength", "[chemistry]") {
  for (const Acid& acid : shipped_acids()) {
    CAPTURE(acid.name);
    const AcidNames& names = inci_data().acid(acid.name);
    // A solution or hydrate uses up alkali as its share of the pure acid does: the strength in one
    // file, from names and molar masses, against the need in the other, from atomic weights.
    for (const Acid& pure : shipped_acids())
      if (inci_data().acid(pure.name).inci == names.inci &&
          inci_data().acid(pure.name).acid_share == 1)
        CHECK_THAT(acid.koh_g_per_g, WithinRel(pure.koh_g_per_g * names.acid_share, 2e-4));
  }
}

TEST_CASE("a plain olive soap lists as the trade lists it", "[chemistry]") {
  const Formula formula = test::plain_olive();
  const Charge charge = charge_of(formula, 1000 * gram);
  const auto put_in = inci_amounts(formula, charge, InciConvention::as_charged);
  REQUIRE(put_in.size() == 3);
  CHECK(put_in[0].name == "Olea Europaea Fruit Oil");
  CHECK(put_in[1].name == "Aqua");
  CHECK(put_in[2].name == "Sodium Hydroxide");
  // 1000 g at 190 mg/g: 135.449 g NaOH, twice that of water.
  CHECK_THAT(put_in[2].mass / gram, WithinAbs(135.45, 0.01));
  const auto became = inci_amounts(formula, charge, InciConvention::as_saponified);
  REQUIRE(became.size() == 3);
  CHECK(became[0].name == "Sodium Olivate");
  // On paper: 135.449 / 39.99677 / 3 x 92.094 = 103.96 g glycerol; 1000 + 135.45 - 103.96 g soap.
  CHECK_THAT(named(became, "Glycerin").mass / gram, WithinAbs(103.96, 0.02));
  CHECK_THAT(became[0].mass / gram, WithinAbs(1031.49, 0.03));
}

TEST_CASE("palm oil and its fractions listed palm three times", "[chemistry]") {
  // One INCI name for the oil and what is pressed out of it, so one ingredient: 200 g of each of
  // 1000 g of fats, among 400 g of olive.
  Formula formula = test::plain_olive();
  formula.fats[0].share = 40 * percent;
  for (const auto* id : {"palm", "palm_olein", "palm_stearin"})
    formula.fats.push_back({*find_fat(id), 20 * percent, find_fat(id)->saponification, false, ""});
  const Charge charge = charge_of(formula, 1000 * gram);
  for (const auto convention : {InciConvention::as_charged, InciConvention::as_saponified}) {
    const auto list = inci_amounts(formula, charge, convention);
    const auto palms = std::count_if(list.begin(), list.end(), [](const InciAmount& amount) {
      return amount.name.find("Elaeis") == 0 || amount.name.find("Palm") != std::string::npos;
    });
    CHECK(palms == 1);
  }
  const auto charged = inci_amounts(formula, charge, InciConvention::as_charged);
  CHECK_THAT(named(charged, "Elaeis Guineensis Oil").mass / gram, WithinAbs(600, 1e-9));
}

TEST_CASE("one INCI name written in two ways was two ingredients", "[chemistry]") {
  std::vector<InciAmount> list;
  put(list, {"Cocos Nucifera Oil", 10 * gram});
  put(list, {"COCOS NUCIFERA (COCONUT) OIL", 5 * gram});
  put(list, {"water", 3 * gram});
  put(list, {"Aqua", 2 * gram});
  put(list, {"Aqua/Water/Eau", 1 * gram});
  REQUIRE(list.size() == 2);
  CHECK(list[0].name == "Cocos Nucifera Oil");
  CHECK_THAT(list[0].mass / gram, WithinAbs(15, 1e-12));
  CHECK(list[1].name == "Aqua");
  CHECK_THAT(list[1].mass / gram, WithinAbs(6, 1e-12));
  // What has no INCI name is the maker's own word, and not one with an INCI name that is spelt
  // alike.
  put(list, {"aqua", 1 * gram, false});
  CHECK(list.size() == 3);
}

TEST_CASE("soaps had names that the glossary does not have", "[chemistry]") {
  // CosIng, the European Commission's list of common ingredient names, as a public copy has it,
  // with its numbers there; it has no Canolate, Sunflowerate or Mangoate.
  const auto [id, soap] = GENERATE(
      table<std::string, std::string>({{"tallow", "Sodium Tallowate"},                 // 80216
                                       {"rapeseed_low_erucic", "Sodium Rapeseedate"},  // 80009
                                       {"sunflower", "Sodium Sunflowerseedate"},       // 89453
                                       {"sunflower_high_oleic", "Sodium Sunflowerseedate"},
                                       {"mango_butter", "Sodium Mangoseedate"},     // 83840
                                       {"macadamia", "Sodium Macadamiaseedate"},    // 83838
                                       {"sweet_almond", "Sodium Sweet Almondate"},  // 59658
                                       {"shea", "Sodium Shea Butterate"},           // 91792
                                       {"safflower", "Sodium Safflowerate"},        // 59556
                                       {"castor", "Sodium Castorate"},              // 79277
                                       {"soybean", "Sodium Soyate"},                // 80082
                                       {"stearic_acid", "Sodium Stearate"}}));      // 38064
  CAPTURE(id);
  CHECK(find_fat(id)->inci_sodium_soap == soap);
  CHECK_THAT(find_fat(id)->inci_sodium_soap_confidence,
             Catch::Matchers::StartsWith("read: CosIng"));
  // 92469: the EU writes Adeps Bovis for what the US writes Tallow.
  CHECK(find_fat("tallow")->inci == "Adeps Bovis");
  CHECK(inci_data().in_english("Adeps Bovis") == "Tallow");
}

TEST_CASE("fat left over is listed with its soap", "[chemistry]") {
  Formula formula = test::plain_olive();
  formula.superfat = 10 * percent;
  const auto list =
      inci_amounts(formula, charge_of(formula, 1000 * gram), InciConvention::as_saponified);
  // 900 g as above, 1031.49 x 0.9, and 100 g of oil as it was.
  CHECK_THAT(named(list, "Sodium Olivate").mass / gram, WithinAbs(928.34 + 100, 0.03));
}

TEST_CASE("two alkalis make two soaps of one fat, by equivalents", "[chemistry]") {
  Formula formula = test::plain_olive();
  formula.alkalis = {{Alkali::sodium_hydroxide, 75 * percent, whole, whole, whole},
                     {Alkali::potassium_hydroxide, 25 * percent, whole, whole, whole}};
  const auto list =
      inci_amounts(formula, charge_of(formula, 1000 * gram), InciConvention::as_saponified);
  // Sodium 75 % of 1031.49; potassium 25 % of 1000 - 103.96 + 190 g.
  CHECK_THAT(named(list, "Sodium Olivate").mass / gram, WithinAbs(0.75 * 1031.49, 0.03));
  CHECK_THAT(named(list, "Potassium Olivate").mass / gram, WithinAbs(0.25 * 1086.04, 0.03));
}

TEST_CASE("milk lists whole as charged, and by what it became as saponified", "[chemistry]") {
  // 100 g of milk: 88 g water, 3 g fat (value 226), 0.1 g salt, 8.9 g else; in 1000 g of olive.
  Additive milk;
  milk.name = "milk";
  milk.rate = Rate{10 * percent, RateBasis::fats};
  milk.liquid = Liquid{88 * percent, 5 * percent, 0.1 * percent, {}, false, "a label"};
  Fat fat = *find_fat("tallow");
  milk.contains_fat = ContainedFat{fat, 3 * percent};
  milk.label.inci = {{"Lac", whole}};
  Formula formula = test::plain_olive();
  formula.additives = {milk};
  const Charge charge{{1000 * gram}, {Mass()}, {140 * gram}, {100 * gram}, 200 * gram};
  const auto put_in = inci_amounts(formula, charge, InciConvention::as_charged);
  CHECK_THAT(named(put_in, "Lac").mass / gram, WithinAbs(100, 1e-9));
  CHECK_THAT(named(put_in, "Aqua").mass / gram, WithinAbs(200, 1e-9));
  const auto became = inci_amounts(formula, charge, InciConvention::as_saponified);
  CHECK_THAT(named(became, "Lac").mass / gram, WithinAbs(8.9, 1e-9));
  CHECK_THAT(named(became, "Aqua").mass / gram, WithinAbs(288, 1e-9));
  CHECK_THAT(named(became, "Sodium Chloride").mass / gram, WithinAbs(0.1, 1e-9));
  CHECK(named(became, "Sodium Tallowate").mass > 3 * gram);
  // Without a name of its own it is listed by what is in it, in both ways.
  formula.additives[0].label.inci.clear();
  const auto split = inci_amounts(formula, charge, InciConvention::as_charged);
  CHECK_THAT(named(split, "Aqua").mass / gram, WithinAbs(288, 1e-9));
  CHECK_THAT(named(split, "Adeps Bovis").mass / gram, WithinAbs(3, 1e-9));
  CHECK_FALSE(named(split, "milk").is_inci);
}

TEST_CASE("an additive is listed by the names of what is in it", "[chemistry]") {
  std::vector<InciAmount> list;
  const LabelData lactate{{{"Sodium Lactate", 60 * percent}, {"Water", 40 * percent}}, {}, ""};
  put_bought(list, lactate, "sodium lactate, 60 %", AdditiveKind::additive, 50 * gram);
  CHECK_THAT(named(list, "Sodium Lactate").mass / gram, WithinAbs(30, 1e-9));
  CHECK_THAT(named(list, "Aqua").mass / gram, WithinAbs(20, 1e-9));
  put_bought(list, {}, "lavender oil", AdditiveKind::fragrance, 5 * gram);
  CHECK(named(list, "Parfum").is_inci);
  put_bought(list, {}, "rose clay", AdditiveKind::additive, 5 * gram);
  CHECK_FALSE(named(list, "rose clay").is_inci);
}

/// Any formula whose acids are known by name; some additives are liquids, some have INCI names.
Formula any_labelled_formula() {
  Formula formula = test::any_formula();
  for (auto& additive : formula.additives) {
    if (additive.contains_acid) {
      const Acid acid = *rc::gen::elementOf(shipped_acids());
      additive.contains_acid->name = acid.name;
      additive.contains_acid->koh_g_per_g = acid.koh_g_per_g;
    }
    if (*rc::gen::arbitrary<bool>() && rest_of(additive) > 50 * percent)
      additive.liquid = Liquid{40 * percent, 5 * percent, 2 * percent, {}, false, ""};
    if (*rc::gen::arbitrary<bool>())
      additive.label.inci = {{"Aqua", 70 * percent}, {"Something", 30 * percent}};
  }
  return formula;
}

TEST_CASE("saponifying neither makes nor loses mass", "[chemistry][law]") {
  rc::prop("what came in is there, as soap or otherwise; no part is negative", [] {
    const Formula formula = any_labelled_formula();
    Charge charge = charge_of(formula, 1000 * gram);
    // The alkali off by as much as a slip of the scale: too little, or more than all can take.
    for (Mass& alkali : charge.alkalis) alkali *= *rc::gen::inRange(50, 151) / 100.0;
    const Saponified soap = saponified(formula, charge);
    RC_ASSERT(abs(soap.total() - charge.total()) <= 1e-9 * charge.total());
    for (const auto& f : soap.fats)
      RC_ASSERT(f.sodium_soap >= Mass() && f.potassium_soap >= Mass() && f.left >= Mass());
    RC_ASSERT(soap.saponified <= whole);
  });
}

TEST_CASE("both lists of a batter weigh what the batter weighs", "[chemistry][law]") {
  rc::prop("masses of both conventions sum to the charge", [] {
    const Formula formula = any_labelled_formula();
    const Charge charge = charge_of(formula, 1000 * gram);
    for (const auto convention : {InciConvention::as_charged, InciConvention::as_saponified}) {
      Mass sum;
      for (const auto& amount : inci_amounts(formula, charge, convention)) sum += amount.mass;
      RC_ASSERT(abs(sum - charge.total()) <= 1e-9 * charge.total());
    }
  });
}

TEST_CASE("what the superfat promises stays unsaponified", "[chemistry][law]") {
  rc::prop("the share saponified is one less the superfat", [] {
    const Formula formula = any_labelled_formula();
    const Saponified soap = saponified(formula, charge_of(formula, 500 * gram));
    RC_ASSERT(std::abs(soap.saponified.of_one() - (1 - formula.superfat.of_one())) < 1e-9);
  });
}

}  // namespace
}  // namespace brimwright::chemistry
