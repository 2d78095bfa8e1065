#include "chemistry/fats.h"
#include "chemistry/formula_file.h"
#include "chemistry/known_ranges.h"
#include "chemistry/supplied_values.h"
#include "chemistry/user_fats.h"
#include "formulas.h"
#include "units/printing.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

// What is done about a saponification value that what is known of the fat contradicts. Published
// ranges: data/fats.json, with a source for each.

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;

double mg(SaponificationValue value) { return value.mg_koh_per_g(); }

/// A formula of `fats` (JSON), superfat 5 %.
std::string formula_of_fats(const std::string& fats, const std::string& rest = "") {
  return R"({ "schema": "brimwright.formula/2", "name": "Bar", "own_fats": "studio.fats.json",
    "fats": [ )" +
         fats + R"( ], "superfat": "5 %",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "99 %",
                  "purity_range": ["98 %", "100 %"] } ],
    "water": { "lye_strength": "33 %" }, "pour_temperature": "38 °C")" +
         rest + " }";
}

std::string alone(const std::string& fat, const std::string& value, const std::string& more = "") {
  return formula_of_fats(R"({ "fat": ")" + fat +
                         R"(", "share": "100 %", "saponification_value": )" + value + more + " }");
}

/// A file of one fat of the maker's own.
FatTable own_fat(const std::string& id, const std::string& name, const std::string& inci,
                 const std::string& value, const std::string& more = "") {
  return FatTable(read_user_fats(Fields::parse(
      R"({ "schema": "brimwright.fats/1", "fats": [ { "id": ")" + id + R"(", "name": ")" + name +
          R"(", "kind": "triglyceride", "inci": ")" + inci +
          R"(", "inci_sodium_soap": "Sodium Soap", "saponification_value": )" + value +
          R"(, "iodine_value": 80, "source": "a delivery note")" + more + " } ] }",
      "studio.fats.json")));
}

Formula read_with(const std::string& text, const FatTable& table = shipped_table()) {
  return read_formula(Fields::parse(text, "bar.formula.json"), table);
}

/// The complaint's parts, or empty ones where nothing was wrong.
UserError::Parts complaint(const std::string& text, const FatTable& table = shipped_table()) {
  try {
    (void)read_with(text, table);
  } catch (const UserError& error) {
    return error.parts();
  }
  return {};
}

std::vector<Remark> of(Severity severity, const std::vector<Remark>& all) {
  std::vector<Remark> some;
  std::copy_if(all.begin(), all.end(), std::back_inserter(some),
               [&](const Remark& remark) { return remark.severity == severity; });
  return some;
}

const std::string olive_acids = R"(, "fatty_acids": { "palmitic": "12 %", "stearic": "3 %",
                                     "oleic": "73 %", "linoleic": "12 %" })";

TEST_CASE("olive with coconut's saponification value is not weighed", "[chemistry]") {
  const auto said = complaint(alone("olive", "257"));
  CHECK(said.file == "bar.formula.json");
  CHECK(said.field == "/fats/0/saponification_value");
  // 184 (CXS 33) to 200 (a producer's sheet): 1 - 0.95 x 257 / 200 = -22.1 %.
  CHECK_THAT(said.problem, Contains("184 to 200 mg KOH/g known for Olive oil"));
  CHECK_THAT(said.problem, Contains("would be -22.1 %"));
  CHECK_THAT(said.remedy, Contains("\"confirmed\": true"));
}

TEST_CASE("no shipped fat is weighed by another's value that makes it lye-heavy", "[chemistry]") {
  int refused = 0, weighed = 0;
  for (const Fat& fat : shipped_fats())
    for (const Fat& other : shipped_fats()) {
      const double value = mg(other.saponification.typical);
      CAPTURE(fat.id, value);
      // Lye for 95 % of the other's value against the most that is known of this fat.
      const bool burns = 0.95 * value > mg(fat.saponification.high);
      const bool is_refused = !complaint(alone(fat.id, exact(value))).problem.empty();
      if (burns) CHECK(is_refused);
      ++(is_refused ? refused : weighed);
    }
  CHECK(refused > 300);  // every short-chained fat's value on every other's line, at the least
  CHECK(weighed > 500);
}

TEST_CASE(
    "a wrong value of a twentieth of the fats is a caution, and the interval reaches over both",
    "[chemistry]") {
  // Need 0.95 x 186.5 + 0.05 x 257 against 0.95 x 186.5 + 0.05 x 200: 1.5 % more, within the 5 %.
  const Formula formula = read_with(formula_of_fats(R"({ "fat": "kokum", "share": "95 %" },
        { "fat": "olive", "share": "5 %", "saponification_value": 257 })"));
  const auto cautions = supplied_value_cautions(formula);
  REQUIRE(cautions.size() == 1);
  CHECK(cautions[0].severity == Severity::caution);
  CHECK_THAT(cautions[0].text, Contains("257 mg KOH/g lies above the 184 to 200 mg KOH/g"));
  CHECK(mg(formula.fats[1].saponification.low) == 184);
  CHECK(mg(formula.fats[1].saponification.typical) == 257);
  CHECK(mg(formula.fats[1].saponification.high) == 257);
  CHECK(taken_as_exact_notes(formula).empty());  // 257 is not
}

TEST_CASE("two doubtful values at once are refused where each alone is not", "[chemistry]") {
  // Olive up to 200, sunflower up to 196 (FSSAI): 0.95 x 208.5 / 198 is more than one.
  const auto both = [](const std::string& olive, const std::string& sunflower) {
    return formula_of_fats(
        R"({ "fat": "olive", "share": "50 %", "saponification_value": )" + olive +
        R"( }, { "fat": "sunflower", "share": "50 %", "saponification_value": )" + sunflower +
        " }");
  };
  CHECK(complaint(both("207", "191")).problem.empty());
  CHECK(complaint(both("190", "210")).problem.empty());
  CHECK(complaint(both("207", "210")).field == "/fats/1/saponification_value");  // the farther one
}

TEST_CASE("a confirmed contradiction is told as danger, and the interval reaches over both",
          "[chemistry]") {
  const Formula formula = read_with(alone("olive", "257", R"(, "confirmed": true)"));
  const auto remarks = supplied_value_cautions(formula);
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].severity == Severity::danger);
  CHECK_THAT(remarks[0].text, Contains("LYE-HEAVY") && Contains("184 to 200 mg KOH/g known for"));
  CHECK(mg(formula.fats[0].saponification.low) == 184);
  CHECK(mg(formula.fats[0].saponification.high) == 257);
  const auto superfat = test::weighing_of(formula, 1000 * gram, 0.1 * gram).superfat();
  CHECK(superfat.low.in_percent() < -30);  // 1 - 0.95 x 257 / 184
  CHECK(superfat.nominal.in_percent() > 4.9);
}

TEST_CASE("only \"confirmed\": true confirms, and only a value beside it", "[chemistry]") {
  CHECK_FALSE(complaint(alone("olive", "257", R"(, "confirmed": false)")).problem.empty());
  CHECK_THAT(complaint(alone("olive", "257", R"(, "confirmed": "yes")")).field,
             Contains("/confirmed"));
  const auto none =
      complaint(formula_of_fats(R"({ "fat": "olive", "share": "100 %", "confirmed": true })"));
  CHECK(none.field == "/fats/0/confirmed");
  // Nothing contradicts 190: nothing to say.
  CHECK(
      supplied_value_cautions(read_with(alone("olive", "190", R"(, "confirmed": true)"))).empty());
}

TEST_CASE("too low a value leaves oil: a caution, and the interval reaches up to the known",
          "[chemistry]") {
  const Formula formula = read_with(alone("olive", "165"));
  const auto cautions = supplied_value_cautions(formula);
  REQUIRE(cautions.size() == 1);
  CHECK(cautions[0].severity == Severity::caution);
  CHECK_THAT(cautions[0].text, Contains("165 mg KOH/g lies below the 184 to 200 mg KOH/g"));
  CHECK(mg(formula.fats[0].saponification.low) == 165);
  CHECK(mg(formula.fats[0].saponification.high) == 200);
}

TEST_CASE("a value that the shipped fat's make-up contradicts is not taken as its whole interval",
          "[chemistry]") {
  // Wheat germ: 179 to 217 (AOCS, from memory), but its acids ask for 194.6 at most.
  const Formula formula = read_with(alone("wheat_germ", "216"));
  const auto cautions = supplied_value_cautions(formula);
  REQUIRE(cautions.size() == 1);
  CHECK_THAT(cautions[0].text, Contains("does not fit its fatty acids"));
  CHECK(mg(formula.fats[0].saponification.low) < 195);
}

TEST_CASE("an own fat is held against the shipped one whose name it has", "[chemistry]") {
  const auto [id, name, inci] = GENERATE(table<std::string, std::string, std::string>({
      {"mine", "Olive", "Something"},
      {"mine", "OLIVE OIL", "Something"},
      {"mine", "Extra virgin olive oil", "Something"},
      {"mine", "Olive oil, cold-pressed, lot 7", "Something"},
      {"mine", "Olivenöl", "Something"},
      {"mine", "Huile d'olive", "Something"},
      {"mine", "olio d’oliva", "Something"},
      {"olive_studio", "From the market", "Something"},
      {"mine", "From the market", "Olea europaea fruit oil"},
      {"mine", "From the market", "OLEA EUROPAEA (OLIVE) FRUIT OIL"},
  }));
  CAPTURE(id, name, inci);
  const auto said = complaint(formula_of_fats(R"({ "fat": ")" + id + R"(", "share": "100 %" })"),
                              own_fat(id, name, inci, "266.5"));
  CHECK(said.file == "studio.fats.json");
  CHECK(said.field == "/fats/0/saponification_value");
  CHECK_THAT(said.problem, Contains("184 to 200 mg KOH/g known for Olive oil"));
}

TEST_CASE("an own fat that only sounds like a shipped one is not held against it", "[chemistry]") {
  const auto name = GENERATE(values<std::string>(
      {"Coconut oil, fractionated", "Palm wax", "Butter", "Kernel oil", "Oil 7"}));
  CAPTURE(name);
  const Formula formula = read_with(formula_of_fats(R"({ "fat": "mine", "share": "100 %" })"),
                                    own_fat("mine", name, "Something", "335"));
  CHECK(supplied_value_cautions(formula).empty());
  // Then nothing checks its value, and that is said.
  const auto notes = taken_as_exact_notes(formula);
  CHECK(std::any_of(notes.begin(), notes.end(), [](const Remark& note) {
    return note.text.find("nothing here can check") != std::string::npos;
  }));
}

TEST_CASE("a slipped line in a file of own fats is contradicted by the fat's own acids",
          "[chemistry]") {
  const auto bar = formula_of_fats(R"({ "fat": "mine", "share": "100 %" })");
  const auto said = complaint(bar, own_fat("mine", "Tree oil", "Something", "256", olive_acids));
  CHECK(said.field == "/fats/0/saponification_value");
  CHECK_THAT(said.problem, Contains("that its fatty acids call for"));
  // Confirmed beside the value in that file: danger.
  const auto confirmed = read_with(
      bar, own_fat("mine", "Tree oil", "Something", "256", olive_acids + R"(, "confirmed": true)"));
  CHECK(of(Severity::danger, supplied_value_cautions(confirmed)).size() == 1);
  CHECK(mg(confirmed.fats[0].saponification.low) < 195);
}

TEST_CASE("coconut's acids and value under olive's name are contradicted by the name",
          "[chemistry]") {
  const std::string coconut_acids =
      R"(, "fatty_acids": { "C8:0": "7 %", "C10:0": "6 %", "C12:0": "48 %", "C14:0": "19 %",
           "C16:0": "9 %", "C18:0": "3 %", "C18:1": "7 %", "C18:2": "1 %" })";
  CHECK_THAT(complaint(formula_of_fats(R"({ "fat": "mine", "share": "100 %" })"),
                       own_fat("mine", "Olive oil", "Something", "256", coconut_acids))
                 .problem,
             Contains("known for Olive oil, whose name it has"));
}

TEST_CASE("an own fat's slip is found inside an additive and in a colour's extra oil too",
          "[chemistry]") {
  const auto own = own_fat("mine", "Olive", "Something", "520");
  const auto [key, rest] = GENERATE(table<std::string, std::string>({
      {"contains_fat", R"(, "additives": [ { "name": "cream", "rate": "40 % of fats",
         "goes_into": "batter", "contains_fat": { "fat": "mine", "share": "30 %" } } ])"},
      {"dispersed_in", R"(, "colours": [ { "name": "mica", "rate": "40 g/kg of fats",
         "dispersed_in": { "fat": "mine", "oil_per_colour": 3, "from": "extra" } } ])"},
  }));
  CAPTURE(key);
  CHECK(complaint(formula_of_fats(R"({ "fat": "olive", "share": "100 %" })", rest), own).file ==
        "studio.fats.json");
}

TEST_CASE("a formula's value for an own fat is held against the file of fats as well",
          "[chemistry]") {
  const auto own = own_fat("mine", "Tree oil", "Something", R"({ "low": 189, "high": 195 })");
  CHECK(complaint(alone("mine", "197"), own).problem.empty());
  CHECK_THAT(complaint(alone("mine", "257"), own).problem, Contains("your file of fats gives"));
}

TEST_CASE("a NaOH value in a file of own fats is told by the fat's name", "[chemistry]") {
  const auto [name, value, would_be] = GENERATE(table<std::string, std::string, std::string>({
      // Coconut's 256.7 and jojoba's 92.6 mg KOH/g x 39.997 / 56.105.
      {"Coconut oil", "183", "would be 256.7"},
      {"Olive oil", "135.4", "would be 189.9"},
      {"Olive oil", "0.1354", "189.9 if it is of NaOH"},
      {"Stearic acid", "140.6", "would be 197.2"},
  }));
  CAPTURE(name, value);
  CHECK_THROWS_WITH(own_fat("mine", name, "Something", value), Contains(would_be));
  CHECK_THROWS_WITH(
      read_user_fats(Fields::parse(R"({ "schema": "brimwright.fats/1", "fats": [ { "id": "wax",
        "name": "Jojoba", "kind": "wax_ester", "inci": "Something",
        "inci_sodium_soap": "Sodium Soap", "saponification_value": 66, "source": "a note" } ] })",
                                   "studio.fats.json")),
      Contains("looks like a NaOH value"));
}

TEST_CASE("NaOH values are challenged in the formula, jojoba's low ones too", "[chemistry]") {
  const auto [fat, value] = GENERATE(table<std::string, std::string>({
      {"jojoba", "66"},
      {"jojoba", "0.066"},
      {"jojoba", "70"},
      {"olive", "135"},
      {"olive", "0.135"},
      {"olive", "0.19"},
      {"coconut", "183"},
      {"stearic_acid", "140.6"},
      {"lauric_acid", "199.7"},
      {"babassu", "175"},
  }));
  CAPTURE(fat, value);
  // Not even a confirmation makes a value of grams or of NaOH one of KOH.
  CHECK_THAT(complaint(alone(fat, value, R"(, "confirmed": true)")).problem,
             Contains("looks like"));
}

TEST_CASE("what is taken as exact is said, in one quiet note", "[chemistry]") {
  const auto read_alkali = [](const std::string& alkali, const std::string& value) {
    return read_with(test::with(alone("olive", value),
                                R"({ "alkali": "NaOH", "share": "100 %", "purity": "99 %",
                  "purity_range": ["98 %", "100 %"] })",
                                alkali));
  };
  const std::string naoh = R"({ "alkali": "NaOH", "share": "100 %", "purity": "99 %" })";
  const auto notes = taken_as_exact_notes(read_alkali(naoh, "190"));
  REQUIRE(notes.size() == 1);
  CHECK(notes[0].severity == Severity::note);
  CHECK_THAT(notes[0].text,
             Contains("the saponification value of Olive oil (190 mg KOH/g), the purity "
                      "of NaOH (99 %)"));
  // With ranges for both, nothing is.
  CHECK(taken_as_exact_notes(
            read_with(alone("olive", R"({ "low": 189, "typical": 190, "high": 191 })")))
            .empty());
}

TEST_CASE("KOH without a purity range gets one, and never less than solid KOH may hold",
          "[chemistry]") {
  // 2 points either way (common practice, no source); industrial solid up to 92 % (GSE).
  const auto [stated, low, high] = GENERATE(table<double, double, double>(
      {{90, 88, 92}, {85, 83, 92}, {92, 90, 94}, {95, 93, 97}, {99, 97, 100}, {100, 98, 100}}));
  CAPTURE(stated);
  const Formula formula = read_with(test::with(
      alone("olive", "190"), R"({ "alkali": "NaOH", "share": "100 %", "purity": "99 %",
                  "purity_range": ["98 %", "100 %"] })",
      R"({ "alkali": "KOH", "share": "100 %", "purity": ")" + exact(stated) + R"( %" })"));
  const auto& koh = formula.alkalis[0];
  CHECK(koh.purity_low.in_percent() == Approx(low));
  CHECK(koh.purity_high.in_percent() == Approx(high));
  const auto notes = taken_as_exact_notes(formula);
  CHECK(std::any_of(notes.begin(), notes.end(), [](const Remark& note) {
    return note.text.find("no purity range is given for KOH") != std::string::npos;
  }));
}

TEST_CASE("NaOH without a purity range is taken as stated", "[chemistry]") {
  const Formula formula = read_with(test::with(alone("olive", "190"), R"(,
                  "purity_range": ["98 %", "100 %"])",
                                               ""));
  CHECK(formula.alkalis[0].purity_low == formula.alkalis[0].purity);
  CHECK(formula.alkalis[0].purity_high == formula.alkalis[0].purity);
}

}  // namespace
}  // namespace brimwright::chemistry
