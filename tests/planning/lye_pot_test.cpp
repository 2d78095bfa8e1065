#include "planning/lye_pot.h"

#include "chemistry/formula_file.h"
#include "planning/bench_heat.h"
#include "sample_run.h"
#include "weighed.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const Scales bench = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};
const PotQuestion nothing_said = {{"test.run.json", "/lye_pot"}, {}};

/// Olive alone at 190 mg/g with `alkali` and `water` as given in JSON.
chemistry::Formula formula_with(
    const std::string& name, const std::string& water,
    const std::string& alkali = R"({ "alkali": "NaOH", "share": "100 %", "purity": "100 %" })",
    const std::string& more = "") {
  return chemistry::read_formula(Fields::parse(
      R"({ "schema": "brimwright.formula/2", "name": ")" + name + R"(",
           "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
           "superfat": "5 %", "alkali": [ )" +
          alkali + R"( ], "water": )" + water + more + R"(, "pour_temperature": "35 °C" })",
      name + ".formula.json"));
}

Mass weighed(const Weighing& weighing, Role role) {
  Mass sum;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == role) sum += i.weighed;
  return sum;
}

bool is_said(const std::vector<Remark>& remarks, const std::string& part) {
  return std::any_of(remarks.begin(), remarks.end(),
                     [&](const Remark& r) { return r.text.find(part) != std::string::npos; });
}

}  // namespace

TEST_CASE("two batters of one strength share a pot by their alkali, never by halves",
          "[planning]") {
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing large = weighing_of(base, 1200 * gram, bench);
  const Weighing small = weighing_of(base, 400 * gram, bench);
  const LyePot pot = lye_pot({{base, large}, {base, small}}, bench, nothing_said);
  REQUIRE(pot.shares.size() == 2);
  // By definition: alkali / strength of each; the whole is both. Steps of 0.1 g.
  const double alkali = large.naoh / gram + small.naoh / gram;
  CHECK_THAT(pot.lye / gram, WithinAbs(3 * alkali, 0.6));  // water to the large scale's gram
  CHECK_THAT(pot.shares[0].lye / pot.shares[1].lye, WithinAbs(large.naoh / small.naoh, 0.01));
  CHECK_THAT((pot.shares[0].lye + pot.shares[1].lye + pot.left) / pot.lye, WithinAbs(1, 1e-12));
  CHECK(pot.shares[0].top_up < 1 * gram);
  CHECK_THAT(pot.strength.of_one(), WithinAbs(1.0 / 3, 0.001));
}

TEST_CASE("the weaker lye is the stronger one with plain water", "[planning]") {
  const auto strong = formula_with("Topping", R"({ "lye_strength": "40 %" })");
  const auto weak = formula_with("Base", R"({ "lye_strength": "30 %" })");
  const Weighing s = weighing_of(strong, 500 * gram, bench);
  const Weighing w = weighing_of(weak, 1000 * gram, bench);
  const LyePot pot = lye_pot({{strong, s}, {weak, w}}, bench, nothing_said);
  CHECK_THAT(pot.strength.of_one(), WithinAbs(0.40, 0.001));
  CHECK(pot.shares[0].top_up < 1 * gram);
  // By hand: alkali a in lye of 40 % brings 1.5 a of water, in lye of 30 % 2.333 a: 0.8333 a more.
  CHECK_THAT(pot.shares[1].top_up / gram, WithinAbs(0.8333 * (w.naoh / gram), 1.0));
}

TEST_CASE("splitting one lye and recombining gives back the total", "[planning][law]") {
  rc::prop("shares sum to the pot, alkali and water arrive where they are asked for", [] {
    const double strengths[] = {*rc::gen::inRange(22, 50) * 1.0, *rc::gen::inRange(22, 50) * 1.0,
                                *rc::gen::inRange(22, 50) * 1.0};
    std::vector<chemistry::Formula> formulas;
    std::vector<Weighing> weighings;
    for (const double strength : strengths) {
      formulas.push_back(formula_with(
          "Part",
          "{ \"lye_strength\": \"" + std::to_string(static_cast<int>(strength)) + " %\" }"));
      const Mass batter = *rc::gen::inRange(300, 6000) * gram;
      weighings.push_back(weighing_of(formulas.back(), batter, bench));
    }
    std::vector<PotBatter> batters;
    for (std::size_t i = 0; i < formulas.size(); ++i)
      batters.push_back({formulas[i], weighings[i]});
    const LyePot pot = lye_pot(batters, bench, nothing_said);

    Mass lye, taken;
    for (const PotShare& share : pot.shares) {
      lye += share.lye;
      taken += share.alkali_taken;
      const double steps = share.lye / pot.share_step;
      RC_ASSERT(std::abs(steps - std::round(steps)) < 1e-6);
      RC_ASSERT(share.lye <= bench.large.most);
    }
    RC_ASSERT(std::abs((lye + pot.left - pot.lye) / gram) < 1e-6);
    RC_ASSERT(pot.left >= -1e-6 * gram);
    RC_ASSERT(pot.left <= 3 * pot.share_step + 1e-6 * gram);
    // A step of lye holds less than a step of alkali; the pot's own rounding adds a step.
    const double slack = 3 * pot.share_step / gram + pot.alkalis[0].step / gram;
    RC_ASSERT(std::abs((taken - pot.alkalis[0].weighed) / gram) <= slack);
    for (std::size_t i = 0; i < batters.size(); ++i) {
      const PotShare& share = pot.shares[i];
      RC_ASSERT(share.alkali_taken <= share.alkali + 1e-6 * gram);  // never more than it asks for
      RC_ASSERT((share.alkali - share.alkali_taken) / gram <= slack);
      const double water = share.lye / gram - share.alkali_taken / gram + share.top_up / gram;
      RC_ASSERT(std::abs(water - weighed(weighings[i], Role::water) / gram) <= 2 + 2 * slack);
    }
  });
}

TEST_CASE("what steamed off is put back to a weight, with the pot's tare if it is known",
          "[planning]") {
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing weighing = weighing_of(base, 1000 * gram, bench);
  const LyePot bare = lye_pot({{base, weighing}}, bench, nothing_said);
  CHECK_FALSE(bare.full_pot);
  CHECK(is_said(bare.remarks, "top it up with plain water"));
  const LyePot pot = lye_pot({{base, weighing}}, bench, {nothing_said.where, 412 * gram});
  REQUIRE(pot.full_pot);
  CHECK_THAT((*pot.full_pot - pot.lye) / gram, WithinAbs(412, 1e-9));
  CHECK(is_said(pot.remarks, "with its pot"));
}

TEST_CASE("different alkalis, purities and proportions make no common lye", "[planning]") {
  const auto entry = [](const std::string& alkali, const std::string& share,
                        const std::string& purity) {
    return "{ \"alkali\": \"" + alkali + "\", \"share\": \"" + share + " %\", \"purity\": \"" +
           purity + " %\" }";
  };
  const std::string water = R"({ "water_to_alkali": 2 })";
  const auto plain = formula_with("Bars", water);
  const auto [alkali, says] = GENERATE_COPY(table<std::string, std::string>({
      {entry("KOH", "100", "90"), "take different alkalis"},
      {entry("NaOH", "90", "100") + "," + entry("KOH", "10", "90"), "take different alkalis"},
      {entry("NaOH", "100", "98"), "different purities of NaOH, 100 % and 98 %"},
  }));
  const auto other = formula_with("Other", water, alkali);
  const Weighing p = weighing_of(plain, 900 * gram, bench),
                 o = weighing_of(other, 900 * gram, bench);
  CHECK_THROWS_WITH(lye_pot({{plain, p}, {other, o}}, bench, nothing_said),
                    Contains("/lye_pot") && Contains(says));
}

TEST_CASE("a lye of both alkalis is shared where both batters hold them alike", "[planning]") {
  const std::string both = R"({ "alkali": "NaOH", "share": "95 %", "purity": "99 %" },
                              { "alkali": "KOH", "share": "5 %", "purity": "90 %" })";
  const auto one = formula_with("One", R"({ "lye_strength": "33 %" })", both);
  const auto two = formula_with("Two", R"({ "lye_strength": "30 %" })", both);
  const Weighing a = weighing_of(one, 800 * gram, bench), b = weighing_of(two, 1500 * gram, bench);
  const LyePot pot = lye_pot({{one, a}, {two, b}}, bench, nothing_said);
  REQUIRE(pot.alkalis.size() == 2);
  CHECK(pot.alkalis[1].name == "KOH, 90 % pure");
  CHECK_THAT(pot.alkalis[1].weighed / gram, WithinAbs((a.koh + b.koh) / gram, 0.11));
  CHECK_THAT(pot.shares[1].superfat.nominal.in_percent(),
             WithinAbs(b.superfat.nominal.in_percent(), 0.3));
}

TEST_CASE("a share weighed on too coarse a scale is told by its superfat", "[planning]") {
  const Scales kitchen = {.large = {5 * gram, 5 * kilogram}, .fine = {5 * gram, 5 * kilogram}};
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing big = weighing_of(base, 1100 * gram, kitchen);
  const Weighing small = weighing_of(base, 190 * gram, kitchen);
  const LyePot pot = lye_pot({{base, big}, {base, small}}, kitchen, nothing_said);
  const auto& share = pot.shares[1];
  const Share shift = share.superfat.nominal - small.superfat.nominal;
  // By definition: the fats' need is planned / (1 - superfat).
  const double expected =
      1 - (1 - small.superfat.nominal.of_one()) * (share.alkali_taken / share.alkali);
  CHECK_THAT(share.superfat.nominal.of_one(), WithinAbs(expected, 1e-9));
  CHECK(is_said(pot.remarks, "Weigh the shares on a finer scale") ==
        (std::abs(shift.in_percent()) > 0.5));
}

TEST_CASE("the doubt that a scale's step leaves in a share of lye is in its superfat",
          "[planning]") {
  // On paper: 55 g of lye on a 5 g scale may be 2.5 g off either way, 4.5 %, and so is the alkali
  // in it: 0.95 x 4.5 = 4.3 points of superfat, which a lye of its own would not have had.
  const Scales kitchen = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}};
  const Scales coarse = {.large = {5 * gram, 5 * kilogram}, .fine = {5 * gram, 5 * kilogram}};
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing big = weighing_of(base, 1100 * gram, kitchen);
  const Weighing small = weighing_of(base, 190 * gram, kitchen);
  const auto fine_pot = lye_pot({{base, big}, {base, small}}, kitchen, nothing_said);
  const auto coarse_pot = lye_pot({{base, big}, {base, small}}, coarse, nothing_said);
  const auto below = [](const PotShare& share) {
    return (share.superfat.nominal - share.superfat.low).in_percent();
  };
  const double off = 2.5 / (coarse_pot.shares[1].lye / gram);
  CHECK(below(coarse_pot.shares[1]) >
        below(fine_pot.shares[1]) +
            (1 - coarse_pot.shares[1].superfat.nominal.of_one()) * off * 100 - 0.2);
  CHECK(coarse_pot.shares[1].superfat.nominal >= small.superfat.nominal);
}

TEST_CASE("a share that may come out lye-heavy by its scale alone is not silent", "[planning]") {
  const Scales coarse = {.large = {5 * gram, 5 * kilogram}, .fine = {5 * gram, 5 * kilogram}};
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing big = weighing_of(base, 1100 * gram, bench);
  int heavy = 0;
  for (double batter_g = 80; batter_g < 200; batter_g += 3) {
    const Weighing small = weighing_of(base, batter_g * gram, bench);
    REQUIRE(small.superfat.low > Share{});
    const LyePot pot = lye_pot({{base, big}, {base, small}}, coarse, nothing_said);
    const bool may_be_heavy = pot.shares[1].superfat.low < Share{};
    heavy += may_be_heavy ? 1 : 0;
    CAPTURE(batter_g);
    CHECK(!pot.shares[1].alarms.empty() == may_be_heavy);
    if (may_be_heavy)
      CHECK_THAT(pot.shares[1].alarms.front().text, Contains("Base from the shared lye solution"));
  }
  CHECK(heavy > 0);
}

TEST_CASE("no share of a pot holds more alkali than its batter asks for", "[planning][law]") {
  rc::prop("on any scales", [] {
    const Scales scales = {.large = {*rc::gen::element(1.0, 2.0, 5.0) * gram, 5 * kilogram},
                           .fine = {*rc::gen::element(0.01, 0.1, 1.0, 5.0) * gram,
                                    *rc::gen::element(200.0, 500.0) * gram}};
    const auto base = formula_with("Base", R"({ "lye_strength": "33 %" })");
    const auto weak = formula_with("Weak", R"({ "lye_strength": "27 %" })");
    const Weighing one = weighing_of(base, *rc::gen::inRange(200, 9000) * gram, bench);
    const Weighing two = weighing_of(weak, *rc::gen::inRange(200, 9000) * gram, bench);
    const LyePot pot = lye_pot({{base, one}, {weak, two}}, scales, nothing_said);
    for (const PotShare& share : pot.shares) {
      RC_ASSERT(share.alkali_taken <= share.alkali + 1e-6 * gram);
      RC_ASSERT(share.superfat.nominal >= share.superfat.low);
    }
    RC_ASSERT(pot.lye >= pot.water + pot.alkalis[0].weighed - 1e-6 * gram);
  });
}

TEST_CASE("a share less than the scale shows is refused", "[planning]") {
  const Scales coarse = {.large = {50 * gram, 5 * kilogram}, .fine = {50 * gram, 5 * kilogram}};
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing big = weighing_of(base, 1500 * gram, bench);
  const Weighing small = weighing_of(base, 60 * gram, bench);
  CHECK_THROWS_WITH(lye_pot({{base, big}, {base, small}}, coarse, nothing_said),
                    Contains("less than the scale's step"));
}

TEST_CASE("milk for the batter may leave too little water for a common pot", "[planning]") {
  const std::string milk = R"(, "liquids": [ { "name": "goat milk", "replaces": "100 % of water",
      "goes_into": "lye", "frozen": true, "composition": "goat milk" } ])";
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const auto creamy =
      formula_with("Creamy", R"({ "water_to_alkali": 2 })",
                   R"({ "alkali": "NaOH", "share": "100 %", "purity": "100 %" })", milk);
  const Weighing b = weighing_of(base, 900 * gram, bench);
  const Weighing c = weighing_of(creamy, 900 * gram, bench);
  CHECK(weighed(c, Role::water) < 1.5 * gram);  // milk is weighed to the fine scale's step
  CHECK_THROWS_WITH(lye_pot({{base, b}, {creamy, c}}, bench, nothing_said),
                    Contains("needs a lye solution of its own"));
}

TEST_CASE("frozen milk keeps the lye cool", "[planning]") {
  const std::string milk = R"(, "liquids": [ { "name": "goat milk", "replaces": "90 % of water",
      "goes_into": "lye", "frozen": FROZEN, "composition": "goat milk" } ])";
  const auto findings = [&](const std::string& frozen) {
    std::string liquids = milk;
    liquids.replace(liquids.find("FROZEN"), 6, frozen);
    const auto formula =
        formula_with("Creamy", R"({ "water_to_alkali": 2 })",
                     R"({ "alkali": "NaOH", "share": "100 %", "purity": "100 %" })", liquids);
    return heat_of({}, formula, weighing_of(formula, 1000 * gram, bench));
  };
  // By hand, for 1 g of NaOH: 1.8 g of ice instead of water at 20 degC takes 1.8 x (333.55 + 83.6)
  // = 751 J from 3 g of lye at 3.6 J/(g K) and 0.27 g of milk's solids at 1.8: 66 K.
  const auto warm = findings("false"), cold = findings("true");
  CHECK_THAT((warm.peak.peak - cold.peak.peak).kelvin(), WithinAbs(66, 5));
}

TEST_CASE("acid in the lye makes it hotter by its neutralisation", "[planning]") {
  // By hand, 1000 g of batter: some 720 g of olive take 93 g of NaOH at 5 %; 2 % of citric acid,
  // 14.4 g, asks for 3 protons x 14.4 / 192.12 = 0.225 mol, 12.5 kJ (55.8 kJ a mole), and for 9 g
  // of NaOH more, which bring their own heat: 12.5 kJ in some 320 g of lye at 3.5 J/(g K) are 11 K.
  const std::string acid = R"(, "additives": [ { "name": "citric acid", "rate": "2 % of fats",
      "goes_into": "WHERE", "contains_acid": { "acid": "citric acid, anhydrous", "share": "100 %" } } ])";
  const auto peak = [&](const std::string& goes_into) {
    std::string additives = acid;
    additives.replace(additives.find("WHERE"), 5, goes_into);
    const auto formula =
        formula_with("Sour", R"({ "water_to_alkali": 2 })",
                     R"({ "alkali": "NaOH", "share": "100 %", "purity": "100 %" })", additives);
    return heat_of({}, formula, weighing_of(formula, 1000 * gram, bench)).peak.peak;
  };
  CHECK_THAT((peak("lye") - peak("batter")).kelvin(), WithinAbs(10.5, 1.5));
}

TEST_CASE("a shared pot gets as hot as one batter's lye of its strength", "[planning]") {
  const auto base = formula_with("Base", R"({ "water_to_alkali": 2 })");
  const Weighing weighing = weighing_of(base, 1000 * gram, bench);
  const LyePot pot = lye_pot({{base, weighing}, {base, weighing}}, bench, nothing_said);
  // Mass cancels: only the strength and the temperatures count.
  CHECK_THAT(heat_of_pot({}, base, pot).peak.peak.celsius(),
             WithinAbs(heat_of({}, base, weighing).peak.peak.celsius(), 0.5));
}
