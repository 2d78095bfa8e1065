#include "chemistry/alkali_names.h"

#include "chemistry/user_fats.h"
#include "formulas.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <string>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;
using test::read;
using test::with_only;

/// What makers, shops and grocers call the alkalis that stand under "alkali", and those that stand
/// nowhere: common names, from memory.
const std::vector<std::string> naoh_and_koh = {"NaOH",
                                               "naoh",
                                               "KOH",
                                               "sodium hydroxide",
                                               "Potassium Hydroxide",
                                               "lye",
                                               "Lye solution",
                                               "caustic soda",
                                               "caustic potash",
                                               "caustic salt",
                                               "soda lye",
                                               "potash lye",
                                               "Ätznatron",
                                               "Natronlauge",
                                               "Kalilauge",
                                               "Ätzkali",
                                               "Natriumhydroxid",
                                               "Kaliumhydroxid",
                                               "Lauge",
                                               "Seifenstein",
                                               "soude caustique",
                                               "lessive de soude",
                                               "hydroxyde de sodium",
                                               "potasse caustique",
                                               "soude",
                                               "sosa cáustica",
                                               "sosa",
                                               "hidróxido de sodio",
                                               "hidróxido de potasio",
                                               "potasa cáustica",
                                               "soda caustica",
                                               "idrossido di sodio",
                                               "potassa caustica",
                                               "idrossido di potassio",
                                               "liscivia"};
const std::vector<std::string> never = {"potash",
                                        "soda ash",
                                        "washing soda",
                                        "soda crystals",
                                        "sodium carbonate",
                                        "potassium carbonate",
                                        "calcium hydroxide",
                                        "slaked lime",
                                        "hydrated lime",
                                        "quicklime",
                                        "ammonia",
                                        "Ammoniak",
                                        "Salmiakgeist",
                                        "Pottasche",
                                        "Waschsoda",
                                        "Kristallsoda",
                                        "Natriumcarbonat",
                                        "Kaliumkarbonat",
                                        "gelöschter Kalk",
                                        "potasse",
                                        "cristaux de soude",
                                        "carbonate de soude",
                                        "chaux éteinte",
                                        "ammoniaque",
                                        "potasa",
                                        "carbonato de sodio",
                                        "cal apagada",
                                        "amoníaco",
                                        "potassa",
                                        "carbonato di sodio",
                                        "calce spenta",
                                        "ammoniaca",
                                        "soda Solvay",
                                        "sodium silicate",
                                        "water glass",
                                        "sodium percarbonate",
                                        "trisodium phosphate",
                                        "lithium hydroxide",
                                        "wood ash",
                                        "triethanolamine"};

/// Salts that are neutral already, plants, pigments, scents and what is said not to be there.
const std::vector<std::string> innocent = {"sodium lactate",
                                           "sodium citrate",
                                           "sodium chloride",
                                           "potassium sorbate",
                                           "potato starch",
                                           "potash alum",
                                           "lime oil",
                                           "lime essential oil",
                                           "soda-free",
                                           "lye-free",
                                           "lye free",
                                           "lye-free soap base",
                                           "laugenfrei",
                                           "sans soude",
                                           "free of lye",
                                           "sea salt",
                                           "epsom salt",
                                           "sodium gluconate",
                                           "sodium benzoate",
                                           "potassium citrate",
                                           "tetrasodium EDTA",
                                           "borax",
                                           "calcium carbonate",
                                           "magnesium carbonate",
                                           "zinc oxide",
                                           "titanium dioxide",
                                           "kaolin",
                                           "volcanic ash",
                                           "encaustic wax",
                                           "cream soda fragrance",
                                           "Laundry day",
                                           "Linge propre",
                                           "lessive fraîche",
                                           "key lime pie",
                                           "lime",
                                           "Koh Samui breeze",
                                           "aluminium hydroxide",
                                           "chromium hydroxide green",
                                           "iron oxide",
                                           "calcium sodium borosilicate",
                                           "sodium magnesium silicate",
                                           "lithium magnesium sodium silicate",
                                           "mica",
                                           "alkali blue",
                                           "lactate de soude",
                                           "citrate de sodium",
                                           "Kalialaun",
                                           "Natriumlactat",
                                           "Natriumcitrat",
                                           "Natriumchlorid",
                                           "Kaliumsorbat",
                                           "Kartoffelstärke",
                                           "Limettenöl",
                                           "lactato de sodio",
                                           "citrato de sodio",
                                           "cloruro de sodio",
                                           "lattato di sodio",
                                           "citrato di sodio",
                                           "olio essenziale di lime",
                                           "Sodalite blue",
                                           "sodium hyaluronate",
                                           "ashes of roses",
                                           "lyebrook lavender",
                                           "potassium alum",
                                           "sulfate of potash",
                                           "magnesium sulfate",
                                           "Kaliber",
                                           "Sosakhan rose",
                                           "Soda Springs mud",
                                           "alkali-refined olive oil",
                                           "cocoa processed with alkali",
                                           "gum ammoniac",
                                           "lye soap shreds",
                                           "sodium bicarbonate"};

std::string entry_of(const std::string& list, const std::string& name) {
  const std::string begin = R"({ "name": ")" + name + R"(", "rate": "2 % of fats")";
  if (list == "additives")
    return begin + R"(, "goes_into": "batter", "contains_acid": "none", "contains_fat": "none" })";
  if (list == "liquids")
    return begin +
           R"(, "goes_into": "lye", "contains_acid": "none", "composition": { "water": "95 %",
            "fat": "none", "sugar": "0 %", "salt": "0 %", "source": "label" } })";
  return begin + (list == "colours" ? R"(, "contains_acid": "none" })" : " }");
}

void check_refused(const std::string& list, const std::string& name, const std::string& says) {
  CAPTURE(list, name);
  try {
    read(with_only(list, entry_of(list, name)));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == "/" + list + "/0/name");
    CHECK_THAT(error.parts().problem, Contains("is an alkali"));
    CHECK_THAT(error.parts().remedy, Contains(says));
  }
}

const std::vector<std::string> lists = {"additives", "liquids", "fragrances", "colours"};

TEST_CASE("an alkali beside the alkalis counted as neutral and made a lye-heavy soap",
          "[chemistry]") {
  for (const auto& name : naoh_and_koh) check_refused("additives", name, "purity");
  for (const auto& name : never) check_refused("additives", name, "leave it out");
  for (const auto& list : lists) {
    check_refused(list, "NaOH", "\"alkali\"");
    check_refused(list, "Soda ash", "leave it out");
  }
}

TEST_CASE("an alkali is known however it is written", "[chemistry]") {
  const auto name = GENERATE(values<std::string>({"NaOH 50 %",
                                                  "50% lye",
                                                  "50%NaOH",
                                                  "Na-OH",
                                                  "N.a.O.H.",
                                                  "CAUSTICSODA",
                                                  "caustic-soda beads",
                                                  "Lyes",
                                                  "sodium hydroxides",
                                                  "Aetznatron",
                                                  "ätznatron",
                                                  "A\u0308tznatron",
                                                  "ÄTZNATRON",
                                                  "Ätz-Natron",
                                                  "Natronlauge 33%ig",
                                                  "Ätznatronperlen",
                                                  "Laugen-Perlen",
                                                  "Sodium\u00a0Hydroxide",
                                                  "sodium\u200b hydroxide",
                                                  "so\u00addium hydroxide",
                                                  "ＮａＯＨ",
                                                  "NaО\u041d",
                                                  "SOSA CAUSTICA",
                                                  "sosa ca\u0301ustica",
                                                  "hidroxido de sodio",
                                                  "Na₂CO₃",
                                                  "K2CO3",
                                                  "Ca(OH)2",
                                                  "E524",
                                                  "E 525",
                                                  "CAS 1310-73-2",
                                                  "NaOH, free of carbonate",
                                                  "lye - free delivery",
                                                  "free-flowing lye",
                                                  "No. 1 lye",
                                                  "carbonate-free NaOH",
                                                  "lavender and lye",
                                                  "soda",
                                                  "Soda 100 %",
                                                  "soda powder",
                                                  "sodium hidroxide",
                                                  "lime, hydrated",
                                                  "drain cleaner",
                                                  "carbonate of soda",
                                                  "Hydroxyde de potassium en paillettes",
                                                  "pure caustic flakes"}));
  CAPTURE(name);
  CHECK(names_an_alkali(name));
}

TEST_CASE("what only sounds like an alkali passes", "[chemistry]") {
  for (const auto& name : innocent) {
    CAPTURE(name);
    CHECK_FALSE(names_an_alkali(name));
    CHECK_NOTHROW(read(with_only("additives", entry_of("additives", name))));
  }
}

/// `name` as a careless hand or another keyboard writes it.
std::string anyhow(const std::string& name, const std::vector<std::string>& endings) {
  std::string out;
  for (const char c : name) {
    const bool is_letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    const bool flip = is_letter && *rc::gen::arbitrary<bool>();
    if (c == ' ')
      out += *rc::gen::element<std::string>(" ", "-", "  ", "_", "/");
    else
      out += flip ? static_cast<char>(c ^ 0x20) : c;
  }
  return *rc::gen::element<std::string>("", "50 % ", "fine ", "(") + out +
         *rc::gen::elementOf(endings);
}

TEST_CASE("no way of writing hides an alkali, and none makes one of an innocent name",
          "[chemistry][law]") {
  rc::prop("case, hyphens, figures and plurals change nothing", [] {
    const std::string alkali = *rc::gen::elementOf(*rc::gen::element(naoh_and_koh, never));
    const std::vector<std::string> any = {"", " 50 %", ")", ", dry", "s", "s, dry"};
    RC_ASSERT(names_an_alkali(anyhow(alkali, any)).has_value());
    // "Lye free, dry" is refused: what follows "free" is taken for what it is free of.
    const std::string harmless = *rc::gen::elementOf(innocent);
    const std::vector<std::string> plain = {"", ")", "."};
    RC_ASSERT(!names_an_alkali(anyhow(harmless, plain)).has_value());
  });
}

TEST_CASE("a name of many thousand words is read once over", "[chemistry]") {
  std::string name;
  for (int i = 0; i < 20'000; ++i) name += "soda ";
  CHECK_FALSE(names_an_alkali(name + "pop"));
  CHECK(names_an_alkali(name + "ash"));
  std::string alums, powders;
  for (int i = 0; i < 20'000; ++i) alums += "potash alum ";
  for (int i = 0; i < 20'000; ++i) powders += i < 10'000 ? "powder " : "soda ";
  CHECK_FALSE(names_an_alkali(alums));
  CHECK(names_an_alkali(alums + "lye"));
  CHECK_FALSE(names_an_alkali(powders));
  CHECK_FALSE(names_an_alkali("\xff\xfe\xc3"));
}

TEST_CASE("an alkali hides behind an INCI name", "[chemistry]") {
  const auto labelled = [](const std::string& inci) {
    return with_only("additives", R"({ "name": "white pearls", "rate": "2 % of fats",
                                       "goes_into": "lye", "inci": )" +
                                      inci + " }");
  };
  CHECK_THROWS_WITH(read(labelled(R"("Sodium Hydroxide")")),
                    Contains("/additives/0/inci") && Contains("is an alkali"));
  // Many a bought thing has its pH set by a trace of it.
  CHECK_NOTHROW(read(labelled(R"([ { "name": "Glycerin", "share": "99.5 %" },
                                   { "name": "Sodium Hydroxide", "share": "0.5 %" } ])")));
}

TEST_CASE("neither an alkali nor an acid is a fat", "[chemistry]") {
  const auto as_fat = [](const std::string& id) {
    return test::with(test::sound_formula(), R"("fat": "coconut")", R"("fat": ")" + id + R"(")");
  };
  CHECK_THROWS_WITH(read(as_fat("NaOH")), Contains("/fats/1/fat") && Contains("is an alkali"));
  CHECK_THROWS_WITH(read(as_fat("citric acid")), Contains("is an acid, not a fat"));
  const auto own = [](const std::string& id, const std::string& name) {
    return Fields::parse(R"({ "schema": "brimwright.fats/1", "fats": [ { "id": ")" + id +
                             R"(", "name": ")" + name + R"(", "kind": "triglyceride",
        "inci": "Olea Europaea Fruit Oil", "inci_sodium_soap": "Sodium Olivate",
        "saponification_value": 190, "source": "the supplier" } ] })",
                         "own.fats.json");
  };
  CHECK_THROWS_WITH(read_user_fats(own("mine", "Lye")),
                    Contains("/fats/0/name") && Contains("is an alkali"));
  CHECK_THROWS_WITH(read_user_fats(own("caustic_soda", "Mine")), Contains("/fats/0/id"));
  CHECK_THROWS_WITH(read_user_fats(own("mine", "Citric acid")), Contains("is an acid, not a fat"));
  CHECK_NOTHROW(read_user_fats(own("limette", "Lime oil")));
}

}  // namespace
}  // namespace brimwright::chemistry
