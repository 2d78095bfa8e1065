#include "chemistry/fat_search.h"
#include "chemistry/inci_data.h"
#include "chemistry/name_words.h"
#include "formulas.h"
#include "units/fields.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace brimwright::chemistry {
namespace {

using Catch::Matchers::Contains;

std::vector<std::string> ids(const std::vector<const Fat*>& fats) {
  std::vector<std::string> all;
  for (const Fat* fat : fats) all.push_back(fat->id);
  return all;
}

TEST_CASE("a fat is found by what makers, botanists and labels call it", "[chemistry]") {
  // Botanical names: Codex Alimentarius CXS 210-1999, 2.1, and CXS 33-1981, 2; of waxes the titles
  // of Ph. Eur. 0069, 0070 and 0134. The rest is common usage.
  const auto [name, id] = GENERATE(table<std::string, std::string>({
      {"wool wax", "lanolin"},
      {"Adeps lanae", "lanolin"},
      {"ANHYDROUS LANOLIN", "lanolin"},
      {"Wollwachs", "lanolin"},
      {"bees-wax", "beeswax"},
      {"Cera alba", "beeswax"},
      {"Cera flava", "beeswax"},
      {"Cire d'abeille", "beeswax"},
      {"starflower oil", "borage"},
      {"Rosa mosqueta", "rosehip"},
      {"rose hip seed oil", "rosehip"},
      {"margosa oil", "neem"},
      {"Azadirachta indica", "neem"},
      {"pomace oil", "olive_pomace"},
      {"olio di sansa", "olive_pomace"},
      {"organic extra virgin olive oil", "olive"},
      {"Olea Europaea (Olive) Fruit Oil", "olive"},
      {"Coconut oil 76", "coconut"},
      {"76 degree coconut oil", "coconut"},
      {"monoi", "coconut"},
      {"hydrogenated coconut oil", "coconut_hydrogenated"},
      {"karité", "shea"},
      {"theobroma oil", "cocoa_butter"},
      {"groundnut oil", "peanut"},
      {"gingelly oil", "sesame"},
      {"linseed oil, cold pressed", "flaxseed"},
      {"Leinol", "flaxseed"},
      {"canola", "rapeseed_low_erucic"},
      {"high oleic sunflower oil", "sunflower_high_oleic"},
      {"PKO", "palm_kernel"},
      {"Palm oil", "palm"},
      {"Elaeis Guineensis Kernel Oil", "palm_kernel"},
  }));
  CAPTURE(name);
  CHECK(ids(fats_named(name)) == std::vector{id});
}

TEST_CASE("no name stands with two fats", "[chemistry][law]") {
  // Labels alone have one name for palm oil and its fractions and for both kinds of an oil.
  std::map<std::string, std::set<std::string>> of_name;
  int names = 0;
  for (const Fat& fat : shipped_fats()) {
    std::vector<std::string> all = fat.also_called;
    all.push_back(fat.name);
    for (const std::string& name : all) {
      CAPTURE(fat.id, name);
      CHECK(ids(fats_named(name)) == std::vector{fat.id});
      std::string spelt;
      for (const std::string& word : words_of(name)) spelt += word + " ";
      of_name[spelt].insert(fat.id);
      ++names;
    }
    CHECK(ids(fats_named(fat.id)) == std::vector{fat.id});
  }
  for (const auto& [name, fats] : of_name) {
    CAPTURE(name);
    CHECK(fats.size() == 1);
  }
  CHECK(names > 300);
}

TEST_CASE("an INCI name finds what is labelled so", "[chemistry][law]") {
  for (const Fat& fat : shipped_fats()) {
    const auto found = ids(fats_named(fat.inci));
    CAPTURE(fat.id, fat.inci);
    CHECK(std::count(found.begin(), found.end(), fat.id) == 1);
    for (const Fat* other : fats_named(fat.inci))
      CHECK(inci_key(other->inci) == inci_key(fat.inci));
  }
  CHECK(ids(fats_named("Elaeis Guineensis Oil")) ==
        std::vector<std::string>{"palm", "palm_olein", "palm_stearin"});
}

TEST_CASE("a word for several fats is asked about with what each of them takes", "[chemistry]") {
  // Ranges: CXS 210-1999, Table 2: palm 190 to 209, palm kernel 230 to 254 mg/g; CXS 33: olive 184
  // to 196, olive pomace 182 to 193.
  const auto [name, first, second] = GENERATE(table<std::string, std::string, std::string>({
      {"Palm", "palm", "palm_kernel"},
      {"palm fat", "palm", "palm_kernel"},
      {"Olive", "olive", "olive_pomace"},
      {"OLIVE, organic", "olive", "olive_pomace"},
      {"coconut 92", "coconut", "coconut_hydrogenated"},
      {"92 degree coconut oil", "coconut", "coconut_hydrogenated"},
      {"92°F coconut", "coconut", "coconut_hydrogenated"},
      {"Kokosfett", "coconut", "coconut_hydrogenated"},
      {"Sunflower", "sunflower", "sunflower_high_oleic"},
      {"stearin", "stearic_acid", "palm_stearin"},
      {"olein", "oleic_acid", "palm_olein"},
  }));
  CAPTURE(name);
  const auto found = ids(fats_named(name));
  CHECK(found.size() > 1);
  CHECK(std::count(found.begin(), found.end(), first) == 1);
  CHECK(std::count(found.begin(), found.end(), second) == 1);
  const std::string said = which_fat(name);
  for (const std::string& id : found) CHECK_THAT(said, Contains("\"" + id + "\" ("));
  CHECK_THAT(said, Contains("it may be") && Contains("mg/g)") && Contains("name the one"));
}

TEST_CASE("every word that is shared is shared by fats that are here", "[chemistry][law]") {
  const Fields data = Fields::read(BRIMWRIGHT_SOURCE_DIR "/src/chemistry/data/fats.json");
  for (const Fields& word : data.objects("shared_names"))
    for (const std::string& name : word.texts("names")) {
      CAPTURE(name);
      CHECK(word.texts("may_be").size() > 1);
      if (find_fat(name) != nullptr) continue;  // an id, as a formula has it
      CHECK(fats_named(name).size() == word.texts("may_be").size());
    }
}

TEST_CASE("what is near in letters alone is not taken for another fat", "[chemistry]") {
  // Creamed coconut is no cocoa butter, fractionated coconut oil (C8 and C10 alone) no coconut oil.
  for (const auto* name : {"coconut butter", "fractionated coconut oil", "soy wax", "butter",
                           "peanut butter", "unobtainium", ""}) {
    CAPTURE(name);
    CHECK(which_fat(name).empty());
  }
  CHECK_THAT(which_fat("cocnut"), Contains("did you mean \"coconut\"?"));
  CHECK_THAT(which_fat("lanoline wax"), !Contains("jojoba"));
  CHECK_THAT(which_fat("wol wax"), Contains("did you mean \"lanolin\"?"));
  CHECK_THAT(which_fat("low erucic"), Contains("did you mean \"rapeseed_low_erucic\"?"));
}

TEST_CASE("a formula that names a fat otherwise is told how it is named here", "[chemistry]") {
  const auto [name, said] = GENERATE(table<std::string, std::string>({
      {"wool wax", "did you mean \"lanolin\"?"},
      {"Olive", "it may be \"olive\" (Olive oil, 190 mg/g) or \"olive_pomace\""},
      {"coconut 92", "\"coconut_hydrogenated\" (Coconut oil, hydrogenated, "},
  }));
  CAPTURE(name);
  CHECK_THROWS_WITH(test::read(test::with(test::sound_formula(), R"("fat": "coconut")",
                                          R"("fat": ")" + name + "\"")),
                    Contains(said) && Contains("is not a fat known here"));
}

}  // namespace
}  // namespace brimwright::chemistry
