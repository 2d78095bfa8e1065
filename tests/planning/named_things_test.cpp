#include "planning/named_things.h"

#include "chemistry/fats.h"
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;

namespace {

chemistry::Additive additive(const std::string& name) {
  chemistry::Additive additive;
  additive.name = name;
  additive.rate = Rate{1 * percent, RateBasis::fats};
  return additive;
}

Run run_with(const chemistry::Additive& additive) {
  Run run = paper_run();
  run.pour.formula.additives = {additive};
  return run;
}

Run dusted_with(const std::string& name, const chemistry::LabelData& label = {}) {
  Run run = paper_run();
  run.dust.push_back({name, 0.05 * gram, label});
  return run;
}

/// All that is said, one after the other.
std::string said_of(const Run& run) {
  std::string text;
  for (const auto& remark : named_thing_remarks(run)) text += remark.text + "\n";
  return text;
}

}  // namespace

TEST_CASE("food that people are allergic to went without a word", "[planning]") {
  const auto [name, kind] = GENERATE(table<std::string, std::string>(
      {{"goat milk powder", "milk (goat milk powder)"},
       {"Ziegenmilch", "milk (Ziegenmilch)"},
       {"lait d'ânesse", "milk (lait d'ânesse)"},
       {"colloidal oatmeal", "oat (colloidal oatmeal)"},
       {"ground almonds", "tree nuts (ground almonds)"},
       {"Walnussschalen, gemahlen", "tree nuts (Walnussschalen, gemahlen)"},
       {"peanut butter", "peanut (peanut butter)"},
       {"tofu", "soya (tofu)"},
       {"Weizenkleie", "wheat (Weizenkleie)"},
       {"wheat bran", "wheat (wheat bran)"},
       {"sesame paste", "sesame (sesame paste)"},
       {"coconut milk", "coconut (coconut milk)"},
       {"Kokosmilch", "coconut (Kokosmilch)"},
       {"oat milk", "oat (oat milk)"}}));
  CAPTURE(name);
  const auto remarks = named_thing_remarks(run_with(additive(name)));
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].severity == Severity::note);
  CHECK_THAT(remarks[0].text, Contains("allergic to what is in this: " + kind + ". "));
  CHECK_THAT(remarks[0].text, Contains("asks for no words about food allergens"));
}

TEST_CASE("what only sounds like food is no food", "[planning]") {
  for (const auto* name : {"milk thistle extract", "cream of tartar", "mandelic acid", "nutmeg",
                           "coats of arms", "Milchsäure", "buck wheat husk", "noix de muscade",
                           "milk-free base", "lactic acid", "cocoa powder"}) {
    CAPTURE(name);
    CHECK(named_thing_remarks(run_with(additive(name))).empty());
  }
}

TEST_CASE("a fragrance that smells of food holds none of it", "[planning]") {
  auto scent = additive("almond milk and honey");
  scent.kind = chemistry::AdditiveKind::fragrance;
  CHECK(named_thing_remarks(run_with(scent)).empty());
  scent.label.inci = {{"Prunus Amygdalus Dulcis Oil", whole}};
  CHECK_THAT(said_of(run_with(scent)), Contains("tree nuts (almond milk and honey)"));
}

TEST_CASE("fats, INCI names and the fat within a thing tell of food too", "[planning]") {
  Run run = paper_run();
  run.pour.formula.fats[0].fat = *chemistry::find_fat("sweet_almond");
  auto juice = additive("my secret");
  juice.label.inci = {{"Cocos Nucifera Fruit Juice", whole}};
  auto mix = additive("another");
  mix.contains_fat = chemistry::ContainedFat{*chemistry::find_fat("sesame"), 5 * percent};
  run.pour.formula.additives = {juice, mix};
  const auto said = said_of(run);
  CHECK_THAT(said, Contains("tree nuts (Almond oil (sweet))"));
  CHECK_THAT(said, Contains("sesame (another)"));
  CHECK_THAT(said, Contains("coconut (my secret)"));
}

TEST_CASE("food is told of once, whatever there is of it", "[planning]") {
  Run run = paper_run();
  for (const auto* name : {"coconut a", "coconut b", "coconut c", "coconut d", "goat milk"})
    run.pour.formula.additives.push_back(additive(name));
  const Plan plan = planning::plan(run);
  const auto notes = std::count_if(plan.cautions.begin(), plan.cautions.end(), [](const auto& c) {
    return c.text.find("allergic to what is in this") != std::string::npos;
  });
  CHECK(notes == 1);
  CHECK_THAT(said_of(run), Contains("coconut (coconut a, coconut b, coconut c and 1 more)"));
}

TEST_CASE("plastic glitter was sprinkled on without a word", "[planning]") {
  // Regulation (EU) 2023/2055, dates as trade summaries of it have them.
  const std::string name =
      GENERATE("gold glitter", "Bioglitter", "Glitzerpulver", "purpurina dorada", "scrub beads",
               "blue microbeads", "biodegradable glitter");
  CAPTURE(name);
  const auto remarks = named_thing_remarks(dusted_with(name));
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].severity == Severity::caution);
  CHECK_THAT(remarks[0].text, Contains("Nothing says what is in " + name));
  CHECK_THAT(remarks[0].text, Contains("17 October 2023") && Contains("17 October 2027"));
}

TEST_CASE("glitter that is plastic by its own INCI name is called so", "[planning]") {
  chemistry::LabelData label;
  label.inci = {{"Polyethylene Terephthalate", 95 * percent}, {"CI 77891", 5 * percent}};
  CHECK_THAT(said_of(dusted_with("gold glitter", label)),
             Contains("Plastic by its own name: gold glitter."));
  CHECK_THAT(said_of(dusted_with("polyester glitter")), Contains("Plastic by its own name"));
}

TEST_CASE("glitter of mica, cellulose or minerals is fine", "[planning]") {
  for (const auto* name : {"gold mica", "cellulose glitter", "mica glitter", "mineral glitter"}) {
    CAPTURE(name);
    CHECK(named_thing_remarks(dusted_with(name)).empty());
  }
  chemistry::LabelData label;
  label.inci = {{"Mica", 60 * percent}, {"CI 77891", 40 * percent}};
  CHECK(named_thing_remarks(dusted_with("unicorn glitter", label)).empty());
  // A polymer that is no powder, and polyethylene glycol, which is no plastic.
  auto gel = additive("carbomer gel");
  gel.label.inci = {{"Acrylates Copolymer", whole}};
  CHECK(named_thing_remarks(run_with(gel)).empty());
}
