#include "chemistry/formula.h"

#include "formulas.h"

#include <catch2/catch.hpp>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using test::read;
using test::sound_formula;
using test::with;

TEST_CASE("a formula means what it says", "[chemistry]") {
  const Formula formula = read(sound_formula());
  CHECK(formula.name == "Test base");
  CHECK(formula.note == "for tests");
  CHECK(formula.file == "test.formula.json");
  REQUIRE(formula.fats.size() == 2);
  CHECK(formula.fats[0].fat.id == "olive");
  CHECK_THAT(formula.fats[0].share.in_percent(), WithinAbs(60, 1e-12));
  CHECK(formula.fats[0].from_supplier);
  CHECK(formula.fats[0].saponification.low.mg_koh_per_g() == 190);
  CHECK(formula.fats[0].saponification.high.mg_koh_per_g() == 190);
  CHECK_FALSE(formula.fats[1].from_supplier);
  CHECK(formula.fats[1].saponification.high.mg_koh_per_g() == 265);
  CHECK(formula.fats[1].lot == "7");
  CHECK_THAT(formula.superfat.in_percent(), WithinAbs(5, 1e-12));
  REQUIRE(formula.alkalis.size() == 1);
  CHECK(formula.alkalis[0].alkali == Alkali::sodium_hydroxide);
  CHECK_THAT(formula.alkalis[0].purity_low.in_percent(), WithinAbs(98, 1e-12));
  CHECK_THAT(std::get<LyeStrength>(formula.water).alkali_in_lye.in_percent(), WithinAbs(33, 1e-12));
  CHECK(formula.pour_temperature.celsius() == 38);
  CHECK(formula.measured_density == 1.02 * gram_per_millilitre);
  CHECK(formula.cure == std::chrono::hours(35 * 24));
  CHECK_THAT(formula.water_lost_in_cure->in_percent(), WithinAbs(85, 1e-12));
}

TEST_CASE("additives, fragrances and colours keep their kind and their order", "[chemistry]") {
  const auto additives = read(sound_formula()).additives;
  REQUIRE(additives.size() == 5);
  CHECK(additives[0].name == "goat milk");
  CHECK(additives[0].rate.of == RateBasis::batter);
  CHECK(additives[0].contains_fat->fat.id == "tallow");
  CHECK(additives[1].goes_into == GoesInto::lye);
  CHECK_THAT(additives[1].contains_acid->koh_g_per_g,
             WithinAbs(3 * 56.1053 / 192.123, 1e-8));  // three protons
  CHECK(additives[2].goes_into == GoesInto::fats);
  CHECK_THAT(*additives[2].bulk_density / gram_per_millilitre, WithinAbs(0.4, 1e-12));
  CHECK(additives[3].kind == AdditiveKind::fragrance);
  CHECK(additives[3].goes_into == GoesInto::batter);
  CHECK(additives[3].limit->of == RateBasis::batter);
  CHECK(additives[4].kind == AdditiveKind::colour);
  CHECK(additives[4].dispersal->oil_per_powder == 2.5);
  CHECK(additives[4].dispersal->from_the_formula);
  CHECK(name_of(additives[4].kind) == "colour");
  CHECK(name_of(additives[2].goes_into) == "fats");
}

TEST_CASE("a supplier's analysis may be a range", "[chemistry]") {
  const auto formula =
      read(with(sound_formula(), R"("saponification_value": 190)",
                R"("saponification_value": { "low": 188, "typical": 190.5, "high": 192 })"));
  CHECK(formula.fats[0].saponification.low.mg_koh_per_g() == 188);
  CHECK(formula.fats[0].saponification.typical.mg_koh_per_g() == 190.5);
  CHECK(formula.fats[0].saponification.high.mg_koh_per_g() == 192);
}

struct Slip {
  std::string from, to;  // in the sound formula
  std::string field;     // where the complaint points
  std::string says;      // a part of it
};

void check_refused(const Slip& slip) {
  CAPTURE(slip.to, slip.field);
  try {
    read(with(sound_formula(), slip.from, slip.to));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().file == "test.formula.json");
    CHECK(error.parts().field == slip.field);
    CHECK_THAT(std::string(error.what()), Contains(slip.says));
    CHECK_FALSE(error.parts().remedy.empty());
  }
}

TEST_CASE("fats that cannot be right are refused", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {R"("60 %")", R"("58 %")", "/fats", "the fats add to 98 %"},
      {R"("60 %")", R"("60.02 %")", "/fats", "the fats add to 100.02 %"},
      {R"("60 %")", "60", "/fats/0/share", "without a unit"},
      {R"("60 %")", R"("0 %")", "/fats/0/share", "is 0 %"},
      {R"("60 %")", R"("160 %")", "/fats/0/share", "160 %"},
      {R"("fat": "coconut")", R"("fat": "olive")", "/fats/1/fat", "appears twice"},
      {R"("fat": "coconut")", R"("fat": "cocnut")", "/fats/1/fat", "did you mean \"coconut\"?"},
      {R"("fat": "coconut")", R"("fat": "Coconut oil")", "/fats/1/fat",
       "did you mean \"coconut\"?"},
      {R"("fat": "coconut")", R"("fat": "shea butter")", "/fats/1/fat", "did you mean \"shea\"?"},
      {R"("fat": "coconut")", R"("fat": "canola")", "/fats/1/fat", "\"rapeseed_low_erucic\""},
      {R"("fat": "coconut")", R"("fat": "linseed")", "/fats/1/fat", "did you mean \"flaxseed\"?"},
      {R"("fat": "coconut")", R"("fat": "unobtainium")", "/fats/1/fat", "not a fat known"},
      {R"("lot": "7")", R"("lott": "7")", "/fats/1/lott", "did you mean \"lot\"?"},
      {R"("lot": "7")", R"("lot": "")", "/fats/1/lot", "is empty"},
  })));
}

TEST_CASE("a formula without fats is refused", "[chemistry]") {
  const std::string text = sound_formula();
  const auto begin = text.find("\"fats\": [");
  const std::string fats = text.substr(begin, text.find("],", begin) + 1 - begin);
  check_refused({fats, R"("fats": [])", "/fats", "is empty"});
  check_refused({fats + ",", "", "/fats", "is missing"});
  check_refused({fats, R"("fats": { "olive": "100 %" })", "/fats", "is an object"});
}

TEST_CASE("a saponification value that is no KOH value is challenged", "[chemistry]") {
  // 0.1354 g NaOH/g and 135.4 mg NaOH/g are 190 mg KOH/g x 0.71289; coconut's 183 is 256.7.
  check_refused(GENERATE(values<Slip>({
      {"190", "135.4", "/fats/0/saponification_value", "would be 189.9"},
      {"190", "0.1354", "/fats/0/saponification_value", "NaOH for a gram of fat"},
      {"190", "0.1354", "/fats/0/saponification_value", "would be 189.9"},
      {"190", "0.190", "/fats/0/saponification_value", "KOH for a gram of fat"},
      {"190", "0.190", "/fats/0/saponification_value", "would be 190"},
      {"190", "100", "/fats/0/saponification_value", "looks like a NaOH value"},
      {"190", "150", "/fats/0/saponification_value", "looks like a NaOH value"},
      {"190", "79", "/fats/0/saponification_value", "no fat's saponification value"},
      {"190", "301", "/fats/0/saponification_value", "no fat's saponification value"},
      {"190", "-190", "/fats/0/saponification_value", "no fat's saponification value"},
      {"190", "0", "/fats/0/saponification_value", "no fat's saponification value"},
      {"190", "true", "/fats/0/saponification_value", "is true"},
      {"190", R"("190")", "/fats/0/saponification_value", "plain number"},
      {"190", R"({ "low": 135, "typical": 190, "high": 195 })", "/fats/0/saponification_value/low",
       "looks like a NaOH value"},
      {"190", R"({ "low": 192, "typical": 190, "high": 195 })", "/fats/0/saponification_value",
       "out of order"},
      {"190", R"({ "low": 188, "high": 195 })", "/fats/0/saponification_value/typical",
       "is missing"},
      {R"("lot": "7")", R"("saponification_value": 183)", "/fats/1/saponification_value",
       "would be 256.7"},
  })));
}

TEST_CASE("a superfat that is missing or beyond reason is refused", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {R"("superfat": "5 %",)", "", "/superfat", "no alkali is worked out"},
      {R"("superfat": "5 %")", R"("superfat": 5)", "/superfat", "without a unit"},
      {R"("superfat": "5 %")", R"("superfat": "-1 %")", "/superfat", "negative"},
      {R"("superfat": "5 %")", R"("superfat": "31 %")", "/superfat", "0 to 30 %"},
  })));
}

TEST_CASE("a bare number is answered with an example of that field", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {R"("share": "60 %")", R"("share": 60)", "/fats/0/share", "such as \"40 %\""},
      {R"("share": "100 %", "purity")", R"("share": 1, "purity")", "/alkali/0/share",
       "such as \"100 %\""},
      {R"("share": "4 %")", R"("share": 4)", "/additives/0/contains_fat/share", "such as \"4 %\""},
      {R"("85 %")", R"("85")", "/water_lost_in_cure", "such as \"85 %\""},
  })));
}

TEST_CASE("an alkali that cannot be right is refused", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {R"("NaOH")", R"("LiOH")", "/alkali/0/alkali", "KOH"},
      {R"("share": "100 %")", R"("share": "90 %")", "/alkali", "add to 90 %"},
      {R"("share": "100 %", )", "", "/alkali/0/share", "is missing"},
      {R"("purity": "99 %")", R"("purity": "50 %")", "/alkali/0/purity", "80 to 100 %"},
      {R"("purity": "99 %")", R"("purity": "101 %")", "/alkali/0/purity", "80 to 100 %"},
      {R"("purity": "99 %", )", "", "/alkali/0/purity", "is missing"},
      {R"("purity": "99 %")", R"("purity": "0.98")", "/alkali/0/purity",
       "\"98 %\", if that is meant"},
      {R"("purity": "99 %")", R"("purity": 0.98)", "/alkali/0/purity",
       "\"98 %\", if that is meant"},
      {R"("purity": "99 %")", R"("purity": "98")", "/alkali/0/purity",
       "\"98 %\", if that is meant"},
      {R"("purity": "99 %")", R"("purity": 98)", "/alkali/0/purity", "\"98 %\", if that is meant"},
      {R"("purity": "99 %")", R"("purity": "0,985")", "/alkali/0/purity", "\"98.5 %\""},
      {R"("purity": "99 %")", R"("purity": "0.98 %")", "/alkali/0/purity", "80 to 100 %"},
      {R"(["98 %", "100 %"])", R"(["98 %"])", "/alkali/0/purity_range", "has 1 values"},
      {R"(["98 %", "100 %"])", R"(["100 %", "98 %"])", "/alkali/0/purity_range", "99 %"},
      {R"(["98 %", "100 %"])", R"(["98 %", "102 %"])", "/alkali/0/purity_range", "80 to 100 %"},
      {R"(["98 %", "100 %"])", R"(["98", "100 %"])", "/alkali/0/purity_range/0", "no unit"},
      {R"([ { "alkali": "NaOH", "share": "100 %", "purity": "99 %")",
       R"([ { "alkali": "NaOH", "share": "40 %", "purity": "99 %" },
            { "alkali": "NaOH", "share": "60 %", "purity": "99 %")",
       "/alkali/1/alkali", "NaOH appears twice"},
  })));
}

TEST_CASE("lye that does not dissolve or is nearly water is refused, however stated",
          "[chemistry]") {
  // NaOH stays dissolved up to 52.2 % at 20 degC (Great Soviet Encyclopedia). This formula's alkali
  // with the need of the acid and the milk is about 16 % of its fats.
  check_refused(GENERATE(values<Slip>({
      {R"("lye_strength": "33 %")", R"("lye_strength": "51 %")", "/water", "does not dissolve"},
      {R"("lye_strength": "33 %")", R"("lye_strength": "51 %")", "/water", "52.2 %"},
      {R"("lye_strength": "33 %")", R"("lye_strength": "14 %")", "/water", "far too weak"},
      {R"("lye_strength": "33 %")", R"("water_to_alkali": 0.9)", "/water", "52.6 %"},
      {R"("lye_strength": "33 %")", R"("water_to_alkali": 6)", "/water", "far too weak"},
      {R"("lye_strength": "33 %")", R"("share_of_fats": "10 %")", "/water", "does not dissolve"},
      {R"("lye_strength": "33 %")", R"("share_of_fats": "120 %")", "/water", "far too weak"},
      {R"("lye_strength": "33 %")", R"("lye_strength": "0 %")", "/water/lye_strength", "0 %"},
      {R"("lye_strength": "33 %")", R"("lye_strength": 33)", "/water/lye_strength", "unit"},
      {R"("lye_strength": "33 %")", R"("water_to_alkali": -2)", "/water/water_to_alkali", "-2"},
      {R"("lye_strength": "33 %")", R"("water_to_alkali": "2:1")", "/water/water_to_alkali",
       "plain number"},
      {R"("lye_strength": "33 %")", "", "/water", "in 0 ways"},
      {R"("lye_strength": "33 %")", R"("lye_strength": "33 %", "water_to_alkali": 2)", "/water",
       "in 2 ways"},
      {R"("lye_strength": "33 %")", R"("percent": "33 %")", "/water/percent", "share_of_fats"},
      {R"("water": { "lye_strength": "33 %" },)", "", "/water", "is missing"},
  })));
}

TEST_CASE("lye of just half alkali, or one part to one, is allowed", "[chemistry]") {
  CHECK_NOTHROW(
      read(with(sound_formula(), R"("lye_strength": "33 %")", R"("lye_strength": "50 %")")));
  CHECK_NOTHROW(
      read(with(sound_formula(), R"("lye_strength": "33 %")", R"("water_to_alkali": 1)")));
  CHECK_NOTHROW(
      read(with(sound_formula(), R"("lye_strength": "33 %")", R"("lye_strength": "15 %")")));
}

TEST_CASE("shares of three thirds to two decimals are a whole", "[chemistry]") {
  CHECK_NOTHROW(read(
      with(with(sound_formula(), R"("60 %")", R"("59.99 %")"), R"("lot": "7")", R"("lot": "8")")));
}

TEST_CASE("the rest of a formula is as strict", "[chemistry]") {
  check_refused(GENERATE(values<Slip>({
      {R"("name": "Test base",)", "", "/name", "is missing"},
      {"brimwright.formula/2", "brimwright.formula/3", "/schema", "brimwright.formula/3"},
      {R"("38 °C")", "38", "/pour_temperature", "unit"},
      {R"("38 °C")", R"("110 °C")", "/pour_temperature", "4 to 100 °C"},
      {R"("38 °C")", R"("38 °F")", "/pour_temperature", "3.3 °C"},
      {R"("1.02 g/ml")", R"("102 g/ml")", "/measured_density", "/measured_density"},
      {R"("1.02 g/ml")", R"("0.2 g/ml")", "/measured_density", "0.3 and 3"},
      {R"("water_lost_in_cure": "85 %")", R"("water_lost_in_cure": "185 %")", "/water_lost_in_cure",
       "185 %"},
      {R"("water_lost_in_cure")", R"("water_lost_in_cur")", "/water_lost_in_cur",
       "did you mean \"water_lost_in_cure\"?"},
  })));
}

}  // namespace
}  // namespace brimwright::chemistry
