#include "planning/cautions.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;

namespace {

chemistry::Additive lavender(Share of_fats) {
  chemistry::Additive additive;
  additive.name = "lavender";
  additive.kind = chemistry::AdditiveKind::fragrance;
  additive.rate = Rate{of_fats, RateBasis::fats};
  return additive;
}

/// Lye that is used at 8 degC and made at 20.
chemistry::HeatQuestion chilled() {
  chemistry::HeatQuestion temperatures;
  temperatures.lye_used_at = Temperature::in_celsius(8);
  return temperatures;
}

bool has_topic(const Run& run, Topic topic) {
  const auto cautions = bench_cautions(run);
  return std::any_of(cautions.begin(), cautions.end(),
                     [&](const Caution& caution) { return caution.topic == topic; });
}

}  // namespace

TEST_CASE("cautions stand where they belong and nowhere else", "[planning]") {
  Run run = paper_run();
  for (const Topic topic : {Topic::lye, Topic::heat, Topic::aluminium, Topic::test})
    CHECK(has_topic(run, topic));
  for (const Topic topic : {Topic::dust, Topic::allergens, Topic::look_alike, Topic::small_parts})
    CHECK_FALSE(has_topic(run, topic));
  run.pipe = paper_pipe();
  CHECK(has_topic(run, Topic::look_alike));
  CHECK_FALSE(has_topic(run, Topic::small_parts));
  run.pipe->formula.additives = {lavender(1 * percent)};
  CHECK(has_topic(run, Topic::allergens));
  run.dust.push_back({"mica", 0.1 * gram});
  CHECK(has_topic(run, Topic::dust));
}

TEST_CASE("every caution is short enough to be read at the bench", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->formula.additives = {lavender(1 * percent)};
  run.pipe->temperatures = chilled();
  run.dust.push_back({"mica", 0.1 * gram});
  run.decorations.push_back(paper_brick());
  const auto cautions = bench_cautions(run);
  CHECK(cautions.size() == 15);
  for (const auto& caution : cautions) {
    CAPTURE(caution.text);
    CHECK(caution.text.size() < 300);
    // Read with wet hands from paper that hangs on the wall: two lines of large type at most.
    const bool is_large = caution.topic == Topic::chilled_lye || caution.topic == Topic::melting ||
                          caution.topic == Topic::whipping;
    if (is_large) CHECK(caution.text.size() < 110);
  }
}

TEST_CASE("a plain pour was told of whipping, melting and lye that waits", "[planning]") {
  Run run = paper_run();
  for (const Topic topic : {Topic::chilled_lye, Topic::melting, Topic::whipping})
    CHECK_FALSE(has_topic(run, topic));
  run.pipe = paper_pipe();
  CHECK(has_topic(run, Topic::whipping));
  CHECK_FALSE(has_topic(run, Topic::chilled_lye));
  run.pipe->temperatures = chilled();
  CHECK(has_topic(run, Topic::chilled_lye));
  run.pipe->temperatures->lye_used_at = Temperature::in_celsius(30);
  CHECK_FALSE(has_topic(run, Topic::chilled_lye));
  run.lye_pot = PotQuestion{{"paper.run.json", "/lye_pot"}, {}};
  CHECK(has_topic(run, Topic::chilled_lye));
  CHECK_FALSE(has_topic(run, Topic::melting));
  run.decorations.push_back(paper_brick());
  CHECK(has_topic(run, Topic::melting));
}

TEST_CASE("a brass tip, a galvanised bucket, a copper pot and a glass jug were not warned of",
          "[planning]") {
  // Metals: a caustic soda producer's page as a tank seller quotes it, read.
  Run run = paper_run();
  run.pipe = paper_pipe();
  std::string said;
  for (const auto& caution : bench_cautions(run))
    if (caution.topic == Topic::aluminium) said += caution.text;
  for (const std::string what :
       {"aluminium", "brass", "bronze", "copper", "zinc", "galvanised", "tin", "magnesium",
        "chrome", "foil", "hisk", "iping tips", "no glass", "HDPE only for cold lye", "PP"}) {
    CAPTURE(what);
    CHECK_THAT(said, Contains(what));
  }
}

TEST_CASE("cautions about any bench buried those about this batch", "[planning]") {
  Run run = paper_run();
  run.pour.formula.additives = {lavender(1 * percent)};  // without a limit: a caution of its own
  const auto cautions = planning::plan(run).cautions;
  bool is_past_the_batch = false;
  for (const auto& caution : cautions) {
    if (caution.severity != Severity::caution) continue;
    is_past_the_batch = is_past_the_batch || caution.is_general;
    CHECK(caution.is_general == is_past_the_batch);
  }
  CHECK_FALSE(cautions.front().is_general);
}

TEST_CASE("too little in the bowl stood behind the heat of the lye", "[planning]") {
  // 33 % lye from water at 45 degC comes near its boiling point; the bowl is short by 5 of 48.
  Run run = paper_run();
  run.pour.temperatures = chemistry::HeatQuestion{};
  run.pour.temperatures->water_at = Temperature::in_celsius(45);
  run.pipe = paper_pipe();
  run.pipe->whip_now = WeighCup{100 * millilitre, 88 * gram};
  const auto cautions = planning::plan(run).cautions;
  const auto first = [&](const auto& is_it) {
    return std::find_if(cautions.begin(), cautions.end(), is_it) - cautions.begin();
  };
  const auto is_short =
      first([](const Caution& c) { return c.text.find(", 5 short") < c.text.size(); });
  const auto is_hot = first([](const Caution& c) {
    return c.topic == Topic::heat && !c.is_general && c.severity == Severity::caution;
  });
  REQUIRE(is_hot < static_cast<std::ptrdiff_t>(cautions.size()));
  CHECK(is_short < is_hot);
}

TEST_CASE("what stops today's batch stood behind label, price and doubtful data", "[planning]") {
  // Danger; the worst corner; the bench today; what is known; label and cost; any work.
  const std::vector<Concern> order = {Concern::superfat, Concern::todays_batch, Concern::data,
                                      Concern::label_and_cost, Concern::any_work};
  std::vector<Caution> sorted;
  for (const Severity severity : {Severity::danger, Severity::caution, Severity::note})
    for (const Concern concern : order)
      for (const std::string which : {"first", "second"})
        sorted.push_back({{severity, which}, Topic::plan, false, concern});
  rc::prop("whatever order they were found in, they are told in one", [&] {
    // Pairs that are alike in both keep their own order, so they move as one.
    std::vector<std::size_t> pairs(sorted.size() / 2);
    for (std::size_t i = 0; i < pairs.size(); ++i) pairs[i] = i;
    for (std::size_t i = pairs.size(); i > 1; --i)
      std::swap(pairs[i - 1], pairs[*rc::gen::inRange<std::size_t>(0, i)]);
    std::vector<Caution> found;
    for (const std::size_t pair : pairs) {
      found.push_back(sorted[2 * pair]);
      found.push_back(sorted[2 * pair + 1]);
    }
    put_in_order(found);
    for (std::size_t i = 0; i < sorted.size(); ++i) {
      RC_ASSERT(found[i].severity == sorted[i].severity);
      RC_ASSERT(found[i].concern == sorted[i].concern);
      RC_ASSERT(found[i].text == sorted[i].text);
    }
  });
}

TEST_CASE("a whip too heavy for today was told after a trial's spread and a missing limit",
          "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->formula.additives = {lavender(1 * percent)};  // no limit: a caution on the label
  run.pipe->trials->weighed = {20 * gram, 30 * gram};     // they differ by 40 %
  run.pipe->whip_now = WeighCup{100 * millilitre, 95 * gram};
  run.pour.mould.remarks.push_back({Severity::caution, "The water weighings differ."});
  std::vector<std::string> told;
  for (const auto& caution : planning::plan(run).cautions)
    if (caution.severity == Severity::caution && !caution.is_general) told.push_back(caution.text);
  const auto place_of = [&](const std::string& part) {
    const auto found = std::find_if(told.begin(), told.end(), [&](const std::string& text) {
      return text.find(part) != std::string::npos;
    });
    CAPTURE(part);
    REQUIRE(found != told.end());
    return found - told.begin();
  };
  CHECK(place_of("At today's whip") < place_of("The water weighings differ"));
  CHECK(place_of("At today's whip") < place_of("The weighed trials differ"));
  CHECK(place_of("The weighed trials differ") < place_of("no limit is given for lavender"));
}

TEST_CASE("first aid says what severe burns ask for, and no vinegar", "[planning]") {
  // P301+P330+P331, P303+P361+P353, P305+P351+P338, P310: Regulation (EC) No 1272/2008, Annex IV.
  std::string said;
  for (const auto& line : first_aid()) said += line.what + ": " + line.to_do + "\n";
  for (const std::string what :
       {"Brush off dry alkali", "clothes off at once, under running water", "at least 20 minutes",
        "lids held open", "lenses out", "until help takes over", "Rinse the mouth. No vomiting",
        "Call at once: Eyes, swallowed or a burn: emergency number or poison centre",
        "Never vinegar"}) {
    CAPTURE(what);
    CHECK_THAT(said, Contains(what));
  }
  CHECK_THAT(first_aid_source(), Contains("P303+P361+P353"));
  CHECK_THAT(first_aid_source(), Contains("safety data sheet"));
}
