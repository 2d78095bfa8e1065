#include "chemistry/acid_reading.h"

#include "chemistry/acid_names.h"
#include "chemistry/acids.h"
#include "chemistry/proportions.h"
#include "chemistry/rate_cautions.h"
#include "chemistry/saponified.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <string>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::read;
using test::with_only;

std::string additive(const std::string& name, const std::string& acid,
                     const std::string& goes_into = "lye") {
  return with_only("additives", R"({ "name": ")" + name + R"(", "rate": "10 % of fats",
                   "goes_into": ")" +
                                    goes_into + R"(", "contains_fat": "none")" +
                                    (acid.empty() ? "" : R"(, "contains_acid": )" + acid) + " }");
}

std::string liquid(const std::string& name, const std::string& acid) {
  return with_only("liquids", R"({ "name": ")" + name + R"(", "rate": "10 % of fats",
                   "goes_into": "lye", "contains_acid": )" +
                                  acid + R"(, "composition": { "water": "85 %",
                   "fat": "none", "sugar": "0 %", "salt": "0 %", "source": "label" } })");
}

std::string share_of(const std::string& acid, const std::string& share,
                     const std::string& more = "") {
  return R"({ "acid": ")" + acid + R"(", "share": ")" + share + "\"" + more + " }";
}

const std::string citric = "citric acid, anhydrous";
const std::string acetic = "acetic acid (100 %)";

double mg_koh_per_g(const Formula& formula) {
  const auto& acid = formula.additives.at(0).contains_acid;
  return acid ? acid->share.of_one() * acid->koh_g_per_g * 1000 : 0;
}

struct Sour {
  std::string name;
  double least_mg_koh_per_g;  // that such a thing takes up
};

/// What is sold takes up at least so much, from memory of labels, by molar masses (KOH 56.105):
/// lemon juice 4.5 % of citric acid (192.12), orange juice 0.7 %, vinegar 4 % of acetic acid
/// (60.05), essence 15 %, lactic acid 80 % (90.08), phosphoric 75 % (97.99, two protons), glycolic
/// 70 % (76.05), acetic acid 60 %; crystals pure, citric acid as its monohydrate (210.14), oxalic
/// acid as its dihydrate (126.06).
const std::vector<Sour> sours = {{"lemon juice", 39.4},
                                 {"Lemon-Juice, fresh", 39.4},
                                 {"lime juice", 39.4},
                                 {"Zitronensaft", 39.4},
                                 {"jus de citron", 39.4},
                                 {"zumo de limón", 39.4},
                                 {"jugo de limon", 39.4},
                                 {"succo di limone", 39.4},
                                 {"orange juice", 6.13},
                                 {"Orangensaft", 6.13},
                                 {"vinegar", 37.4},
                                 {"white vinegar", 37.4},
                                 {"apple cider vinegar", 37.4},
                                 {"Essig", 37.4},
                                 {"Apfelessig", 37.4},
                                 {"vinaigre de cidre", 37.4},
                                 {"vinagre", 37.4},
                                 {"aceto di vino", 37.4},
                                 {"vinegar 10 %", 93.4},
                                 {"vinegar essence", 140.1},
                                 {"Essigessenz 25 %", 233.5},
                                 {"lemon juice concentrate", 175.2},
                                 {"lemon juice from concentrate", 39.4},
                                 {"citric acid 50 % in water", 400.5},
                                 {"verjus", 11.22},
                                 {"citric acid", 800.9},
                                 {"Zitronensäure", 800.9},
                                 {"acide citrique", 800.9},
                                 {"ácido cítrico", 800.9},
                                 {"acido citrico", 800.9},
                                 {"anhydrous citric acid", 876.1},
                                 {"lactic acid", 498.2},
                                 {"Milchsäure 88 %", 548.1},
                                 {"acide lactique 80 %", 498.2},
                                 {"acetic acid", 560.5},
                                 {"Essigsäure 25 %", 233.5},
                                 {"cream of tartar", 298.1},
                                 {"Weinstein", 298.1},
                                 {"crème de tartre", 298.1},
                                 {"cremor tartaro", 298.1},
                                 {"oxalic acid", 890.0},
                                 {"glycolic acid", 516.4},
                                 {"salicylic acid", 406.2},
                                 {"benzoic acid", 459.4},
                                 {"phosphoric acid 85 %", 973.3},
                                 {"phosphoric acid", 858.8},
                                 {"malic acid", 836.8},
                                 {"Apfelsäure", 836.8},
                                 {"tartaric acid", 747.6},
                                 {"Weinsäure", 747.6},
                                 {"ascorbic acid", 318.5},
                                 {"Vitamin C powder", 318.5},
                                 {"baking soda", 667.8},
                                 {"Natron", 667.8},
                                 {"bicarbonate de soude", 667.8},
                                 {"bicarbonato", 667.8},
                                 {"potassium bicarbonate", 560.4}};

/// The formula's own answer that a complaint proposes: from "{" to "}".
std::string proposed_in(const std::string& remedy) {
  const auto begin = remedy.find('{');
  const auto end = remedy.find('}');
  REQUIRE(begin != std::string::npos);
  REQUIRE(end != std::string::npos);
  return remedy.substr(begin, end + 1 - begin);
}

std::string hint_for(const std::string& formula, const std::string& field) {
  try {
    read(formula);
  } catch (const UserError& error) {
    CHECK(error.parts().field == field);
    return error.parts().remedy;
  }
  FAIL("was not asked for its acid");
  return "";
}

TEST_CASE("the hint for lemon juice was pure citric acid, and typed back it made lye-heavy soap",
          "[chemistry]") {
  for (const Sour& sour : sours) {
    CAPTURE(sour.name);
    const std::string remedy = hint_for(additive(sour.name, ""), "/additives/0/contains_acid");
    CAPTURE(remedy);
    const Formula formula = read(additive(sour.name, proposed_in(remedy)));
    const double counted = mg_koh_per_g(formula);
    CHECK(counted > 0.9 * sour.least_mg_koh_per_g);    // the right strength
    CHECK(counted < 1.001 * sour.least_mg_koh_per_g);  // and never alkali for acid not there
  }
}

TEST_CASE("what no table knows is asked for by a hint that works too", "[chemistry]") {
  const auto name = GENERATE(
      values<std::string>({"hyaluronic acid", "boric acid", "Fruchtsäure", "vinegar powder",
                           "Essigpulver", "lemon juice powder", "acide hyaluronique"}));
  CAPTURE(name);
  const std::string remedy = hint_for(additive(name, ""), "/additives/0/contains_acid");
  // Any acid under 5,600 g/mol takes more; what is typed unread must not leave lye.
  CHECK(mg_koh_per_g(read(additive(name, proposed_in(remedy)))) <= 10);
}

TEST_CASE("a juice, vinegar, wine or sour milk counts no more acid than such a thing has",
          "[chemistry]") {
  struct Row {
    std::string name, acid, within, beyond;
  };
  const auto row = GENERATE(values<Row>({
      {"lemon juice", citric, "9 %", "9.1 %"},
      {"lemon juice", citric, "6 %", "100 %"},
      {"Zitronensaft", citric, "6 %", "60 %"},
      {"jus de citron", "citric acid monohydrate", "9 %", "12 %"},
      {"aloe juice", citric, "0.2 %", "20 %"},
      {"vinegar", acetic, "12 %", "12.1 %"},
      {"apple cider vinegar", "vinegar, 5 g acetic acid per 100 g", "100 %", ""},
      {"Apfelessig", acetic, "5 %", "50 %"},
      {"vinaigre", acetic, "8 %", "100 %"},
      {"red wine", "tartaric acid", "0.7 %", "7 %"},
      {"vino rosso", "tartaric acid", "0.7 %", "7 %"},
      {"whey", "lactic acid (100 %)", "0.8 %", "8 %"},
      {"buttermilk", "lactic acid (100 %)", "0.8 %", "100 %"},
      {"Joghurt", "lactic acid (100 %)", "1 %", "10 %"},
      {"lemon juice from concentrate", citric, "5 %", "20 %"},
      {"Zitronensaft aus Konzentrat", citric, "5 %", "20 %"},
      {"lemon juice", "oxalic acid, anhydrous", "5 %", "9 %"},
  }));
  CAPTURE(row.name, row.acid);
  CHECK_NOTHROW(read(additive(row.name, share_of(row.acid, row.within))));
  CHECK_NOTHROW(read(liquid(row.name, share_of(row.acid, row.within))));
  if (row.beyond.empty()) return;
  for (const std::string more : {"", R"(, "confirmed": true)"}) {
    CHECK_THROWS_WITH(read(additive(row.name, share_of(row.acid, row.beyond, more))),
                      Contains("/additives/0/contains_acid/share") && Contains("lye-heavy"));
    CHECK_THROWS_WITH(read(liquid(row.name, share_of(row.acid, row.beyond, more))),
                      Contains("/liquids/0/contains_acid/share"));
  }
}

TEST_CASE("an essence is stronger only where its name says so and the formula confirms it",
          "[chemistry]") {
  const auto name = GENERATE(values<std::string>(
      {"vinegar essence", "Essigessenz", "essence de vinaigre", "vinagre concentrado",
       "aceto concentrato", "lemon juice concentrate", "Zitronensaftkonzentrat",
       "jus de citron concentré", "succo di limone concentrato"}));
  CAPTURE(name);
  const std::string acid = name.find("itron") != std::string::npos ||
                                   name.find("lemon") != std::string::npos ||
                                   name.find("limone") != std::string::npos
                               ? citric
                               : acetic;
  CHECK_THROWS_WITH(read(additive(name, share_of(acid, "25 %"))),
                    Contains("read the bottle again") && Contains("\"confirmed\": true"));
  const Formula formula = read(additive(name, share_of(acid, "25 %", R"(, "confirmed": true)")));
  const auto remarks = data_doubts(formula, proportions(formula));
  CHECK(std::any_of(remarks.begin(), remarks.end(), [](const Remark& r) {
    return r.severity == Severity::caution && r.text.find("lye-heavy") != std::string::npos;
  }));
  CHECK_THROWS_WITH(read(additive(name, share_of(acid, "25 %", R"(, "confirmed": "yes")"))),
                    Contains("/additives/0/contains_acid/confirmed"));
}

TEST_CASE("what a thing takes up may be typed, within what it can", "[chemistry]") {
  const auto typed = [](const std::string& name, const std::string& takes_up,
                        const std::string& more = "") {
    return additive(name, R"({ "takes_up": ")" + takes_up + "\"" + more + " }");
  };
  CHECK_THAT(mg_koh_per_g(read(typed("fruit acid blend", "560 mg KOH/g"))), WithinRel(560, 1e-12));
  CHECK_THAT(mg_koh_per_g(read(typed("lemon juice", "43,8 mg KOH/g"))), WithinRel(43.8, 1e-12));
  struct Row {
    std::string name, takes_up, says;
  };
  const auto row = GENERATE(values<Row>({
      {"sour", "560", "does not end in \"mg KOH/g\""},
      {"sour", "0 mg KOH/g", "above 0"},
      {"sour", "1251 mg KOH/g", "up to 1250"},
      {"sour", "many mg KOH/g", "/additives/0/contains_acid/takes_up"},
      {"lemon juice", "100 mg KOH/g", "a juice holds at most 78.8 mg KOH/g"},
      {"vinegar", "560 mg KOH/g", "a vinegar holds at most"},
      {"kefir", "60 mg KOH/g", "a sour milk holds at most"},
      {"citric acid", "1000 mg KOH/g", "which pure takes 876"},
      {"lactic acid 80 %", "600 mg KOH/g", "says 80 %"},
  }));
  CAPTURE(row.name, row.takes_up);
  CHECK_THROWS_WITH(read(typed(row.name, row.takes_up)), Contains(row.says));
  CHECK_THROWS_WITH(read(typed("sour", "5 mg KOH/g", R"(, "acid": "malic acid")")),
                    Contains("stands beside"));
  CHECK_THROWS_WITH(read(typed("sour", "5 mg KOH/g", R"(, "confirmed": true)")),
                    Contains("confirms nothing"));
}

TEST_CASE("a strength in the name is not overruled by a stronger acid", "[chemistry]") {
  CHECK_THROWS_WITH(
      read(additive("phosphoric acid 85 %", share_of("phosphoric acid (100 %)", "100 %"))),
      Contains("says 85 %") && Contains("\"share\": \"85 %\""));
  CHECK_THROWS_WITH(read(additive("vinegar 5 %", share_of(acetic, "10 %"))), Contains("says 5 %"));
  CHECK_THROWS_WITH(read(additive("lactic acid", share_of("oxalic acid, anhydrous", "100 %"))),
                    Contains("which pure takes 622.9"));
  CHECK_THROWS_WITH(read(additive("citric acid, 50 % in water", share_of(citric, "100 %"))),
                    Contains("says 50 %"));
  CHECK_NOTHROW(read(additive("citric acid 99.5 %", share_of(citric, "100 %"))));
  CHECK_NOTHROW(read(additive("lactic acid 88 %", share_of("lactic acid (100 %)", "88 %"))));
}

bool is_said(const Formula& formula, const std::string& part) {
  const auto remarks = data_doubts(formula, proportions(formula));
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const Remark& r) { return r.text.find(part) != std::string::npos; });
}

TEST_CASE("vinegar given as holding no acid does not slip past without a word", "[chemistry]") {
  CHECK(is_said(read(additive("vinegar", "\"none\"")), "given as holding no acid"));
  CHECK(is_said(read(liquid("Zitronensaft", "\"none\"")), "given as holding no acid"));
  CHECK_FALSE(is_said(read(additive("kaolin", "\"none\"")), "given as holding no acid"));
}

TEST_CASE("an acid is no scent and no colour, but scents and colours may be called sour",
          "[chemistry]") {
  const auto scent = [](const std::string& name) {
    return with_only("fragrances", R"({ "name": ")" + name + R"(", "rate": "2 % of fats" })");
  };
  const auto colour = [](const std::string& name) {
    return with_only("colours", R"({ "name": ")" + name + R"(", "rate": "2 % of fats" })");
  };
  CHECK_THROWS_WITH(read(scent("citric acid")), Contains("is not a fragrance"));
  CHECK_THROWS_WITH(read(scent("Natron")), Contains("is not a fragrance"));
  for (const auto* name : {"limoncello fragrance", "Limoncello", "Lemon juice", "Vinegar Valentine",
                           "baking soda fragrance", "Citric burst", "Vitamin C", "White wine"})
    CHECK_NOTHROW(read(scent(name)));
  CHECK_THROWS_WITH(read(colour("cream of tartar")), Contains("/colours/0/contains_acid"));
  for (const auto* name : {"carminic acid", "acid blue 9", "wine red", "lemon"})
    CHECK_NOTHROW(read(colour(name)));
}

TEST_CASE("amino acids, acid dyes and what is free of acid are not asked", "[chemistry]") {
  for (const auto* name :
       {"silk amino acids", "Aminosäuren", "acid-free", "säurefrei", "placid lake",
        "sodium lactate", "Natriumcitrat", "lactate de sodium", "citrato de sodio"}) {
    CAPTURE(name);
    CHECK_FALSE(names_an_acid(name));
  }
}

TEST_CASE("fatty acids are fats in every language", "[chemistry]") {
  for (const auto* name : {"Stearinsäure", "acide stéarique", "ácido esteárico", "acido stearico",
                           "Ölsäure", "fatty acids"}) {
    CAPTURE(name);
    CHECK_THROWS_WITH(read(additive(name, "")), Contains("\"fats\""));
  }
  CHECK_THROWS_WITH(read(additive("Glykolsäure", "")), Contains("glycolic acid"));
}

/// Olive alone at 190 mg/g, pure NaOH, 5 % superfat, 33 % strength, with vinegar at 20 %.
std::string with_vinegar(const std::string& goes_into, const std::string& water = "33 %",
                         const std::string& rate = "20 %") {
  return R"({ "schema": "brimwright.formula/2", "name": "Sour base",
    "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
    "superfat": "5 %", "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "100 %" } ],
    "water": { "lye_strength": ")" +
         water + R"(" }, "pour_temperature": "35 °C",
    "additives": [ { "name": "vinegar", "rate": ")" +
         rate + R"( of fats", "goes_into": ")" + goes_into +
         R"x(", "contains_acid": { "acid": "acetic acid (100 %)", "share": "5 %" } } ] })x";
}

TEST_CASE("the water in vinegar was left out of the lye's strength", "[chemistry]") {
  // By hand, for 1 g of fats (NaOH 39.99677, KOH 56.10537, acetic acid 60.052 g/mol):
  //   NaOH  = 0.190 x 0.712888 x 0.95 + 0.2 x 0.05 x 39.99677 / 60.052 = 0.135336 g
  //   water = 0.135336 x 67 / 33 = 0.274773 g, and 0.2 x 0.95 = 0.19 g in the vinegar
  const double naoh = 0.190 * 0.712888 * 0.95 + 0.2 * 0.05 * 39.99677 / 60.052;
  const double strength = naoh / (naoh / 0.33 + 0.19);
  const Formula in_lye = read(with_vinegar("lye"));
  const Proportions p = proportions(in_lye);
  CHECK_THAT(p.water, WithinRel(naoh * 67 / 33, 1e-5));  // the formula's water stays as stated
  CHECK_THAT(p.water_in_acids, WithinRel(0.19, 1e-12));
  CHECK_THAT(p.stated_strength.in_percent(), WithinAbs(33, 1e-9));
  CHECK_THAT(p.pot_strength.of_one(), WithinRel(strength, 1e-5));  // 22.55 %
  CHECK_THAT(p.lye_strength.of_one(), WithinRel(strength, 1e-5));
  CHECK(is_said(in_lye, "33 % strong by the formula, is 22.6 % in its pot."));
  const auto cautions = rate_cautions(in_lye, p);
  CHECK(std::any_of(cautions.begin(), cautions.end(), [](const Remark& r) {
    return r.text.find("makes a very wet batter") != std::string::npos;
  }));

  const Formula in_batter = read(with_vinegar("batter"));
  const Proportions q = proportions(in_batter);
  CHECK_THAT(q.pot_strength.in_percent(), WithinAbs(33, 1e-9));
  CHECK_THAT(q.lye_strength.of_one(), WithinRel(strength, 1e-5));
  CHECK(is_said(in_batter, "is 33 % in its pot and 22.6 % in the batter"));
}

TEST_CASE("vinegar may neither drown the lye nor make up for water that is not there",
          "[chemistry]") {
  CHECK_THROWS_WITH(
      read(with_vinegar("lye", "20 %", "30 %")),
      Contains("/water") && Contains("with the water that the acids") && Contains("\"liquids\""));
  CHECK_THROWS_WITH(read(with_vinegar("lye", "55 %")), Contains("does not dissolve"));
}

TEST_CASE("a powder brings no water", "[chemistry]") {
  const Formula formula = read(additive("whey powder", share_of("lactic acid (100 %)", "1 %")));
  CHECK(proportions(formula).water_in_acids == 0);
  const Formula crystals =
      read(additive("citric acid", share_of("citric acid monohydrate", "100 %")));
  // One water for each: 18.015 / 210.138 g/mol.
  CHECK_THAT(proportions(crystals).water_in_acids, WithinRel(0.1 * 18.015 / 210.138, 1e-4));
}

TEST_CASE("vinegar as a liquid was said to hold 195 %", "[chemistry]") {
  const std::string text =
      with_only("liquids", R"({ "name": "vinegar", "rate": "10 % of fats", "goes_into": "lye",
         "contains_acid": { "acid": "vinegar, 5 g acetic acid per 100 g", "share": "100 %" },
         "composition": { "water": "95 %", "fat": "none", "sugar": "0 %", "salt": "0 %",
                          "source": "bottle" } })");
  const Formula formula = read(text);
  CHECK_THAT(mg_koh_per_g(formula), WithinRel(46.71, 1e-3));  // 5 % of 56.105 / 60.052
  const auto& acid = *formula.additives.at(0).contains_acid;
  CHECK(acid.name == acetic);
  CHECK_THAT(acid.share.in_percent(), WithinAbs(5, 1e-9));
  CHECK_THAT(rest_of(formula.additives.at(0)).in_percent(), WithinAbs(0, 1e-9));
  CHECK(proportions(formula).water_in_acids == 0);  // its water is the liquid's
}

TEST_CASE("whatever acid goes in, counted or typed, the superfat is what was aimed at",
          "[chemistry][law]") {
  rc::prop("the alkali for the acid is extra", [] {
    const Acid acid = *rc::gen::elementOf(shipped_acids());
    const int percent_of_it = *rc::gen::inRange(1, 101);
    const bool typed = *rc::gen::arbitrary<bool>();
    const std::string text =
        typed ? R"({ "takes_up": ")" + std::to_string(10 * percent_of_it) + R"( mg KOH/g" })"
              : share_of(acid.name, std::to_string(percent_of_it) + " %");
    const Formula formula =
        read(additive("something", text, *rc::gen::element<std::string>("lye", "batter")));
    const auto superfat = test::weighing_of(formula, kilogram, gram).superfat();
    RC_ASSERT(std::abs(superfat.nominal.in_percent() - 5) < 1e-6);
    // And what becomes of it neither makes nor loses mass.
    const Proportions p = proportions(formula);
    const auto in_grams = [](const std::vector<double>& list) {
      std::vector<Mass> masses;
      for (const double one : list) masses.push_back(one * gram);
      return masses;
    };
    Charge charge;
    charge.fats = in_grams(p.fats);
    charge.extra_oils = in_grams(p.extra_oil);
    charge.alkalis = in_grams(p.alkalis);
    charge.additives = in_grams(p.additives);
    charge.water = p.water * gram;
    const Saponified soap = saponified(formula, charge);
    RC_ASSERT(abs(soap.total() - charge.total()) <= 1e-9 * charge.total());
    RC_ASSERT(std::abs(soap.saponified.in_percent() - 95) < 1e-6);
  });
}

TEST_CASE("a neutral salt taken for its acid asks for lye that nothing takes", "[chemistry]") {
  // Sodium lactate at 3 % of the fats, counted as lactic acid, was 1.9 % of KOH too much.
  const auto name = GENERATE(values<std::string>(
      {"sodium lactate", "Sodium Lactate, 60 % solution", "Natriumlactat", "trisodium citrate",
       "citrate de sodium", "potassium citrate", "sodium acetate", "sodium ascorbate"}));
  CHECK_THROWS_WITH(
      read(additive(name, share_of("lactic acid (100 %)", "100 %"))),
      Contains("/additives/0/contains_acid/share") && Contains("has taken its alkali"));
  CHECK_THROWS_WITH(
      read(additive(name, R"({ "takes_up": "560 mg KOH/g" })")),
      Contains("/additives/0/contains_acid/takes_up") && Contains("has taken its alkali"));
  CHECK(mg_koh_per_g(read(additive(name, R"({ "takes_up": "8 mg KOH/g" })"))) == 8);
}

TEST_CASE("an acid named beside its salt may be counted", "[chemistry]") {
  const auto name = GENERATE(
      values<std::string>({"citric acid with sodium citrate", "potassium hydrogen tartrate"}));
  CHECK_NOTHROW(read(additive(name, R"({ "takes_up": "200 mg KOH/g" })")));
}

}  // namespace
}  // namespace brimwright::chemistry
