#include "chemistry/fragrance_allergens.h"

#include "chemistry/inci_data.h"
#include "formulas.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using test::read;
using test::sound_formula;
using test::with;

Formula with_allergens(const std::string& allergens) {
  return read(with(sound_formula(), R"("limit": "3 % of batter")",
                   "\"allergens\": [" + allergens + R"(], "document": "declaration 7")"));
}

const std::vector<Allergen>& allergens_of(const Formula& formula) {
  return formula.additives[3].label.allergens;
}

TEST_CASE("the list of allergens is that of the law", "[chemistry]") {
  // Counts of Regulation (EU) 2023/1545 as a transcription of it has them: 17 entries replaced, 45
  // added (327 to 371), and of 67 to 92 those nineteen that it left alone.
  const auto& entries = fragrance_allergens().entries;
  CHECK(entries.size() == 17 + 45 + 19);
  const auto between = [&](int first, int last) {
    return std::count_if(entries.begin(), entries.end(), [&](const ListedAllergen& a) {
      return a.entry >= first && a.entry <= last;
    });
  };
  CHECK(between(327, 371) == 45);
  CHECK(between(67, 92) == 19 + 4);  // and 70, 73, 86, 88, which it replaced
  // Struck out: benzyl alcohol's old entry, HICC and Lilial, which are prohibited.
  for (const int gone : {68, 79, 83, 125, 126, 158, 160, 168}) CHECK(between(gone, gone) == 0);
  std::set<int> numbers;
  for (const auto& entry : entries) numbers.insert(entry.entry);
  CHECK(numbers.size() == entries.size());
}

TEST_CASE("thresholds and dates of the list are those of the law", "[chemistry]") {
  const auto& law = fragrance_allergens();
  CHECK(law.named_above_rinsed_off == 0.01 * percent);
  CHECK(law.named_above_left_on == 0.001 * percent);
  CHECK(law.placed_until == "31 July 2026");
  CHECK(law.available_until == "31 July 2028");
}

TEST_CASE("an allergen is found by every name of its entry", "[chemistry]") {
  // Entries of Annex III, as transcribed.
  const auto [name, on_label] = GENERATE(table<std::string, std::string>(
      {{"LINALOOL", "Linalool"},
       {"linalool", "Linalool"},
       {"d-Limonene", "Limonene"},
       {"(+)-Limonene", "Limonene"},
       {"Geranial", "Citral"},
       {"neral", "Citral"},
       {"alpha-Pinene", "Pinene"},
       {"β-pinene", "Pinene"},
       {"Alpha Isomethyl Ionone", "Alpha-Isomethyl Ionone"},
       {"delta-Damascone", "Rose Ketones"},
       {"Lavandula Angustifolia Oil", "Lavandula Oil/Extract"},
       {"Lavandula Angustifolia (Lavender) Oil", "Lavandula Oil/Extract"},
       {"LAVANDULA HYBRIDA OIL", "Lavandula Oil/Extract"},
       {"Citrus Sinensis Peel Oil", "Citrus Aurantium Peel Oil"},
       {"Eucalyptus Globulus Leaf Oil", "Eucalyptus Globulus Oil"},
       {"Cymbopogon Flexuosus Oil", "Lemongrass Oil"}}));
  CAPTURE(name);
  const auto* listed = listed_allergen(name);
  REQUIRE(listed);
  CHECK(listed->name == on_label);
}

TEST_CASE("what is not on the list is not found on it", "[chemistry]") {
  for (const auto* name : {"Nerol", "Citronellal", "Lavandula Stoechas Extract", "Parfum", "Aqua",
                           "Melaleuca Alternifolia Leaf Oil"}) {
    CAPTURE(name);
    CHECK(listed_allergen(name) == nullptr);
  }
}

TEST_CASE("a misspelt allergen went unnamed", "[chemistry]") {
  const auto [wrong, right] =
      GENERATE(table<std::string, std::string>({{"linalol", "Linalool"},
                                                {"Linaolol", "Linalool"},
                                                {"Limonen", "Limonene"},
                                                {"Cumarin", "Coumarin"},
                                                {"Geranoil", "Geraniol"},
                                                {"Vanilin", "Vanillin"},
                                                {"Eugenyl acetat", "Eugenyl Acetate"}}));
  CAPTURE(wrong);
  CHECK(meant_allergen(wrong) == right);
  const std::string entry = R"({ "name": ")" + wrong + R"(", "share": "2 %")";
  CHECK_THROWS_WITH(with_allergens(entry + " }"), Contains("/fragrances/0/allergens/0/name") &&
                                                      Contains("did you mean \"" + right + "\"?"));
  // Whoever knows that it is another substance says so, and it is none to be named.
  const auto confirmed = with_allergens(entry + R"(, "listed": false })");
  REQUIRE(allergens_of(confirmed).size() == 1);
  CHECK(allergens_of(confirmed)[0].name == wrong);
  CHECK(allergens_of(confirmed)[0].is_other);
}

TEST_CASE("a substance that is only spelt like an allergen is no slip for it", "[chemistry]") {
  // All real and none on the list: nerol is a letter off neral, citronellal off citronellol,
  // menthone two off menthol.
  for (const auto* name : {"Nerol", "Citronellal", "Menthone", "Camphene", "gamma-Terpinene",
                           "Geranyl Formate", "Bornyl Acetate", "Terpinen-4-ol", "Thymol"}) {
    CAPTURE(name);
    CHECK_FALSE(meant_allergen(name));
    CHECK(is_other_fragrance(name));
  }
  const auto formula = with_allergens(R"({ "name": "Nerol", "share": "2 %" })");
  CHECK(allergens_of(formula)[0].is_other);
}

TEST_CASE("no name on the list is taken for a slip for another", "[chemistry][law]") {
  for (const auto& entry : fragrance_allergens().entries) {
    CAPTURE(entry.name);
    CHECK_FALSE(meant_allergen(entry.name));
    CHECK(listed_allergen(entry.name) == &entry);
    CHECK_FALSE(is_other_fragrance(entry.name));
  }
}

TEST_CASE("both pinenes are one allergen, and their shares are added", "[chemistry]") {
  const auto formula = with_allergens(
      R"({ "name": "alpha-Pinene", "share": "1 %" }, { "name": "beta-Pinene", "share": "0.5 %" })");
  REQUIRE(allergens_of(formula).size() == 1);
  CHECK(allergens_of(formula)[0].name == "Pinene");
  CHECK_THAT(allergens_of(formula)[0].share.in_percent(), Catch::Matchers::WithinAbs(1.5, 1e-12));
  CHECK_THROWS_WITH(with_allergens(R"({ "name": "Linalool", "share": "1 %" },
                                      { "name": "LINALOOL", "share": "1 %" })"),
                    Contains("appears twice"));
}

TEST_CASE("an oil is known by what makers call it, a fragrance oil is not that oil",
          "[chemistry]") {
  const auto called = [](const char* name) -> std::string {
    const auto* listed = listed_extract_called(name);
    return listed ? listed->name : "";
  };
  CHECK(called("lavender essential oil") == "Lavandula Oil/Extract");
  CHECK(called("Lavandin Super") == "Lavandula Oil/Extract");
  CHECK(called("Peppermint EO") == "Mentha Piperita Oil");
  CHECK(called("Ylang-Ylang III") == "Cananga Odorata Oil/Extract");
  CHECK(called("lavender fragrance oil") == "");
  CHECK(called("Lavender dream blend") == "");
  CHECK(called("tea tree oil") == "");
  CHECK(called("clover") == "");
}

TEST_CASE("what is prohibited is known by its trade name too", "[chemistry]") {
  REQUIRE(prohibited_fragrance("Lilial"));
  CHECK(prohibited_fragrance("lilial")->name == "Butylphenyl Methylpropional");
  CHECK(prohibited_fragrance("HICC"));
  CHECK_FALSE(prohibited_fragrance("Linalool"));
}

TEST_CASE("two ways of writing an INCI name have one key", "[chemistry]") {
  const auto [one, other] = GENERATE(
      table<std::string, std::string>({{"Elaeis Guineensis (Palm) Oil", "ELAEIS GUINEENSIS OIL"},
                                       {"CI77891", "CI 77891"},
                                       {"α-Pinene", "alpha pinene"},
                                       {"Lavandula Angustifolia Flower / Leaf / Stem Extract",
                                        "lavandula angustifolia flower/leaf/stem extract"}}));
  CHECK(inci_key(one) == inci_key(other));
  CHECK(inci_key("Olea Europaea Fruit Oil") != inci_key("Olea Europaea Leaf Oil"));
  CHECK_FALSE(inci_key("(Palm)").empty());
  CHECK_FALSE(inci_key("Palm (").empty());
}

}  // namespace
}  // namespace brimwright::chemistry
