#include "chemistry/user_fats.h"

#include "chemistry/fat_density.h"
#include "chemistry/fats.h"
#include "chemistry/formula_file.h"
#include "chemistry/supplied_values.h"
#include "chemistry/theoretical_value.h"
#include "complaint.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <string>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using test::sound_formula;
using test::with;

std::string sound_fats() {
  return R"({
  "$schema": "fats.schema.json",
  "schema": "brimwright.fats/1",
  "note": "for tests",
  "fats": [ {
    "id": "argan_studio", "name": "Argan oil", "kind": "triglyceride",
    "inci": "Argania Spinosa Kernel Oil", "inci_sodium_soap": "Sodium Arganate",
    "saponification_value": { "low": 189, "high": 199 },
    "iodine_value": 100,
    "density": { "at": "20 °C", "low": "0.906 g/ml", "high": "0.919 g/ml" },
    "melting_range": { "low": "-10 °C", "high": "-8 °C" },
    "unsaponifiable": "1.1 %",
    "fatty_acids": { "C16:0": ["11.5 %", "15 %"], "stearic": "6 %", "oleic": ["43 %", "49 %"],
                     "linoleic": ["29 %", "36 %"] },
    "source": "a certificate of analysis", "lot": "A7", "note": "cold pressed"
  } ]
})";
}

std::vector<Fat> read_fats(const std::string& text) {
  return read_user_fats(Fields::parse(text, "studio.fats.json"));
}

std::string complaint(const std::string& text) {
  return brimwright::test::complaint_of([&] { read_fats(text); });
}

TEST_CASE("a maker's own fat is what its supplier's document says", "[chemistry]") {
  const auto fats = read_fats(sound_fats());
  REQUIRE(fats.size() == 1);
  const Fat& argan = fats.front();
  CHECK(argan.is_users_own);
  CHECK(argan.saponification_read);
  CHECK(argan.saponification.typical.mg_koh_per_g() == 194);
  CHECK(argan.typical_chosen == "the middle of the supplier's range");
  CHECK(argan.saponification_source == "a certificate of analysis");
  CHECK(argan.inci_potassium_soap == "Potassium Arganate");
  CHECK(argan.iodine_value == std::pair{100.0, 100.0});
  CHECK(argan.fatty_acids->acids.size() == 4);
  CHECK(argan.lot == "A7");
  CHECK(argan.liquid_at_room_temperature());
  CHECK_THAT(density_of(argan, Temperature::in_celsius(20)).density / gram_per_millilitre,
             WithinAbs(0.9125, 1e-12));
  CHECK_FALSE(profile_disagreement(argan, argan.saponification));
}

TEST_CASE("a formula may name a maker's own fat as any other", "[chemistry]") {
  const FatTable table(read_fats(sound_fats()));
  CHECK(table.fats().size() == shipped_fats().size() + 1);
  const std::string text =
      with(with(sound_formula(), R"("fats": [)", R"("own_fats": "studio.fats.json", "fats": [)"),
           R"({ "fat": "coconut", "share": "40 %", "lot": "7" })",
           R"({ "fat": "argan_studio", "share": "40 %" })");
  const Fields file = Fields::parse(with(text, R"("dispersed_in": { "fat": "olive")",
                                         R"("dispersed_in": { "fat": "argan_studio")"),
                                    "test.formula.json");
  CHECK(fats_file_named_in(file) == "studio.fats.json");
  const Formula formula = read_formula(file, table);
  CHECK(formula.fats[1].fat.name == "Argan oil");
  CHECK(formula.fats[1].lot == "A7");
  CHECK(formula.fats[1].saponification.high.mg_koh_per_g() == 199);
  CHECK(supplied_value_cautions(formula).empty());
  // Without the file it is an unknown fat, never a guess.
  CHECK_THROWS_WITH(read_formula(file), Contains("argan_studio"));
}

TEST_CASE("an own fat counts in place of the built-in one whose id it has", "[chemistry]") {
  // A file from before argan oil was built in stopped working.
  const auto formula_with = [](const std::string& value) {
    const FatTable table(read_fats(with(with(sound_fats(), "argan_studio", "argan"),
                                        R"({ "low": 189, "high": 199 })", value)));
    CHECK(table.fats().size() == shipped_fats().size());
    return read_formula(
        Fields::parse(with(sound_formula(), R"({ "fat": "coconut", "share": "40 %", "lot": "7" })",
                           R"({ "fat": "argan", "share": "40 %" })"),
                      "test.formula.json"),
        table);
  };
  const Formula own = formula_with("190");
  CHECK(own.fats[1].saponification.typical.mg_koh_per_g() == 190);
  const auto notes = own_in_place_notes(own);
  REQUIRE(notes.size() == 1);
  CHECK_THAT(notes[0].text, Contains("Test base: \"argan\" is your own Argan oil, not the built-in "
                                     "one: 190 mg KOH/g, where that has"));
  CHECK(supplied_value_cautions(own).empty());
  // Outside what is known of argan oil (180 to 200, data/fats.json) the challenge stands.
  CHECK_THAT(supplied_value_cautions(formula_with("176")).at(0).text,
             Contains("below the 180 to 200 mg KOH/g known for Argan oil"));
  CHECK_THAT(brimwright::test::complaint_of([&] { formula_with("232"); }),
             Contains("above the 190.5 to 193.3 mg KOH/g that its fatty acids call for"));
  // A formula that does not name the file has the built-in one.
  CHECK_FALSE(find_fat("argan")->is_users_own);
}

TEST_CASE("the supplier's analysis of a lot wins over the own fat's range, too", "[chemistry]") {
  const FatTable table(read_fats(sound_fats()));
  const auto formula_with = [&](const std::string& value) {
    return read_formula(
        Fields::parse(with(sound_formula(), R"({ "fat": "coconut", "share": "40 %", "lot": "7" })",
                           R"({ "fat": "argan_studio", "share": "40 %", "lot": "B1",
                                "saponification_value": )" +
                               value + " }"),
                      "test.formula.json"),
        table);
  };
  const Formula narrowed = formula_with("192");
  CHECK(narrowed.fats[1].saponification.low.mg_koh_per_g() == 192);
  CHECK(narrowed.fats[1].lot == "B1");
  CHECK(supplied_value_cautions(narrowed).empty());
  // 205 lies within 5 % of the range, but above all that is known of argan oil (180 to 200,
  // data/fats.json).
  const auto cautions = supplied_value_cautions(formula_with("205"));
  REQUIRE(cautions.size() == 1);
  CHECK_THAT(cautions[0].text, Contains("Test base: Argan oil") &&
                                   Contains("above the 180 to 200 mg KOH/g known for Argan oil"));
}

TEST_CASE("light triglycerides have values that no kitchen oil has", "[chemistry]") {
  // Ph. Eur. 0868 (medium-chain triglycerides): 310 to 360 mg/g, from memory. Tricaprylin alone:
  // 3 x 56105.3 / 470.69 = 357.6.
  const auto mct =
      with(with(sound_fats(), R"({ "low": 189, "high": 199 })", "335"),
           R"({ "C16:0": ["11.5 %", "15 %"], "stearic": "6 %", "oleic": ["43 %", "49 %"],
                     "linoleic": ["29 %", "36 %"] })",
           R"({ "caprylic": "60 %", "capric": "40 %" })");
  const auto fats = read_fats(mct);
  CHECK(fats[0].typical_chosen == "the supplier's one value, taken as exact");
  CHECK_FALSE(profile_disagreement(fats[0], fats[0].saponification));
}

TEST_CASE("what no supplier's document can say of a fat is refused in one line", "[chemistry]") {
  const std::string range = R"({ "low": 189, "high": 199 })";
  const auto [from, to, says] = GENERATE_COPY(table<std::string, std::string, std::string>({
      {"argan_studio", "olive",
       "\"olive\" is the built-in Olive oil, and \"Argan oil\" is another fat; choose another id, "
       "such as \"argan_studio\""},
      {"argan_studio", "Argan Oil", "cannot be an id"},
      {"\"triglyceride\"", "\"oil\"", "/kind"},
      {R"("source": "a certificate of analysis",)", "", "/source"},
      {range, "135.5", "looks like a NaOH value, not a KOH value; give milligrams of KOH"},
      {range, "0.138", "grams of alkali for a gram of fat"},
      {range, "92", "lies where no such fat's"},
      {range, "700", "120 to 600"},
      {range, R"({ "low": 199, "high": 189 })", "out of order"},
      // 189 x 0.7129: a NaOH value that only the fatty acids tell.
      {R"("triglyceride")", R"("wax_ester")", "40 to 200"},
      {"\"iodine_value\": 100", "\"iodine_value\": 300", "0 to 250"},
      {"\"iodine_value\": 100", "\"iodine_value\": -1", "0 to 250"},
      {R"("0.906 g/ml")", R"("0.95 g/ml")", "low lies above its high"},
      {R"("0.919 g/ml")", R"("1.2 g/ml")", "0.75 and 1.05"},
      {R"("20 °C")", R"("400 °C")", "°C"},
      {R"("-10 °C")", R"("10 °C")", "low lies above its high"},
      {"\"1.1 %\"", "\"70 %\"", "0 to 60 %"},
      {"\"stearic\": \"6 %\"", "\"stearic\": \"60 %\"", "add to 143.5 % at least"},
      {R"("linoleic": ["29 %", "36 %"])", R"("linoleic": ["2 %", "3 %"])", "at most"},
      {"\"stearic\"", "\"steric\"", "is not a fatty acid"},
      {R"(["11.5 %", "15 %"])", R"(["15 %", "11.5 %"])", "low lies above its high"},
      {R"(["11.5 %", "15 %"])", R"(["11.5 %"])", "has 1 values"},
      {"\"Sodium Arganate\"", "\"Arganate\"", "does not begin with"},
      {"\"lot\"", "\"lott\"", "did you mean \"lot\"?"},
      {"brimwright.fats/1", "brimwright.fats/9", "/schema"},
  }));
  if (from == R"("triglyceride")") {
    // As a wax, 189 to 199 would be possible; 700 would not.
    CHECK_THAT(complaint(with(with(sound_fats(), from, to), range, "700")), Contains(says));
    return;
  }
  CAPTURE(from, to);
  const std::string said = complaint(with(sound_fats(), from, to));
  CHECK_THAT(said, Contains(says));
  CHECK_THAT(said, Catch::Matchers::StartsWith("studio.fats.json: /"));
}

TEST_CASE("a NaOH value that could be a KOH value is told by the fatty acids", "[chemistry]") {
  // Coconut's 256 mg KOH/g x 39.997 / 56.105 = 182.5, which is any oil's KOH value but coconut's.
  const auto coconut =
      with(with(sound_fats(), R"({ "low": 189, "high": 199 })", "182.5"),
           R"({ "C16:0": ["11.5 %", "15 %"], "stearic": "6 %", "oleic": ["43 %", "49 %"],
                     "linoleic": ["29 %", "36 %"] })",
           R"({ "C8:0": "7 %", "C10:0": "6 %", "C12:0": "48 %", "C14:0": "19 %",
                     "C16:0": "9 %", "C18:0": "3 %", "C18:1": "7 %", "C18:2": "1 %" })");
  CHECK_THAT(complaint(coconut), Contains("looks like a NaOH value") && Contains("would be 256"));
}

TEST_CASE("no fats, or one id twice, is no table", "[chemistry]") {
  CHECK_THAT(complaint(R"({ "schema": "brimwright.fats/1", "fats": [] })"), Contains("is empty"));
  CHECK_THAT(complaint(R"({ "schema": "brimwright.fats/1" })"), Contains("is missing"));
  const std::string fat = sound_fats().substr(sound_fats().find("{\n    \"id\""));
  const std::string one = fat.substr(0, fat.rfind(" ]"));
  CHECK_THAT(complaint(R"({ "schema": "brimwright.fats/1", "fats": [ )" + one + ", " + one + "] }"),
             Contains("appears twice"));
}

TEST_CASE("the example of own fats reads, and its values fit its acids", "[chemistry]") {
  const auto fats =
      read_user_fats(Fields::read(BRIMWRIGHT_SOURCE_DIR "/examples/studio.fats.json"));
  REQUIRE(fats.size() == 2);
  for (const Fat& fat : fats) {
    CAPTURE(fat.id);
    CHECK_FALSE(profile_disagreement(fat, fat.saponification));
  }
}

}  // namespace
}  // namespace brimwright::chemistry
