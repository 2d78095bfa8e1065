#include "planning/fragrance.h"

#include "planning/cautions.h"
#include "planning/plan.h"
#include "sample_run.h"
#include "units/printing.h"
#include "units/reading.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <optional>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

chemistry::Additive lavender(Share of_fats) {
  chemistry::Additive additive;
  additive.name = "lavender";
  additive.kind = chemistry::AdditiveKind::fragrance;
  additive.rate = Rate{of_fats, RateBasis::fats};
  return additive;
}

bool has_caution(const Plan& plan, const std::string& says) {
  return std::any_of(plan.cautions.begin(), plan.cautions.end(), [&](const Caution& caution) {
    return caution.text.find(says) != std::string::npos;
  });
}

}  // namespace

TEST_CASE("what is poured from a bottle is never more than it holds", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.bottles = {{"lavender", 100 * gram}};
  const Plan plan = planning::plan(run);
  REQUIRE(plan.bottles.size() == 1);
  const auto& parts = plan.bottles[0].parts;
  REQUIRE(parts.size() == 2);
  CHECK(parts[0].gives + parts[1].gives <= 100 * gram);
  CHECK(parts[0].gives + parts[1].gives > 99.8 * gram);  // two steps of 0.1 g at most
  CHECK_THAT(parts[0].of_batter.in_percent(), WithinAbs(parts[1].of_batter.in_percent(), 0.01));
}

TEST_CASE(
    "a bottle is shared over batches and whippings, and all shares together do not empty it twice",
    "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.batch.pieces = 12;
  run.batch.whippings = 2;
  run.bottles = {{"lavender", 100 * gram}};
  const Plan plan = planning::plan(run);
  REQUIRE(plan.pieces.batches == 4);
  Mass given;
  for (const auto& batch : plan.batches)
    for (const auto& part : batch.bottles[0].parts)
      given += static_cast<double>(batch.count() * part.count) * part.gives;
  CHECK(given <= 100 * gram);
  CHECK(given > 98.8 * gram);  // twelve steps of 0.1 g at most
  const auto& parts = plan.bottles[0].parts;
  REQUIRE(parts.size() == 2);
  CHECK(abs(parts[0].gives + parts[1].gives - given) < 1e-9 * gram);
  CHECK_THAT(parts[0].of_batter.in_percent(), WithinAbs(parts[1].of_batter.in_percent(), 0.03));
}

TEST_CASE("half of a bottle in each of two batters is refused with its figures", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.bottles = {{"lavender", 100 * gram, SharingWay::half_in_each}};
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("paper.run.json: /bottles/0/shared: half of lavender in each makes "
                             "1.11 % of the base and"));  // 50 / 4497.5
  run.pipe.reset();
  CHECK_NOTHROW(planning::plan(run));
}

TEST_CASE("a bottle that breaks a limit says in which part", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pour.formula.additives = {lavender(1 * percent)};
  run.pipe->formula.additives = {lavender(1 * percent)};
  run.pour.formula.additives[0].limit = Rate{5 * percent, RateBasis::batter};
  run.pipe->formula.additives[0].limit = Rate{1 * percent, RateBasis::batter};
  run.bottles = {{"lavender", 100 * gram}};
  const Plan plan = planning::plan(run);
  CHECK(has_caution(plan, "Topping: the bottle would make lavender"));
  CHECK_FALSE(has_caution(plan, "Base: the bottle would make"));
}

TEST_CASE("a bottle that breaks a limit says how many grams do not", "[planning]") {
  // 1 % of the batter of the first batch, as its formula weighs it, on a scale of 0.1 g.
  Run run = paper_run();
  run.pour.formula.additives = {lavender(1 * percent)};
  run.pour.formula.additives[0].limit = Rate{1 * percent, RateBasis::batter};
  run.bottles = {{"lavender", 100 * gram}};
  const Plan plan = planning::plan(run);
  const Mass batter = plan.batches.front().pour.batter.weighing.batter;
  const Mass most = rounded_down(0.01 * batter, 0.1 * gram);
  CHECK(has_caution(plan, "use at most " + on_scale(most, 0.1 * gram, Rounded::down)));
}

TEST_CASE("cautions name the part that breaks its limit", "[planning]") {
  Run run = paper_run();
  run.pour.formula.additives = {lavender(4 * percent)};
  auto& limit = run.pour.formula.additives[0].limit;
  SECTION("4 % of the fats is above 3 % of the fats") {
    limit = Rate{3 * percent, RateBasis::fats};
    CHECK(has_caution(planning::plan(run),
                      "Batter: lavender makes up 4 % of the fats; its supplier "
                      "allows at most 3 % of it"));
  }
  SECTION("4 % of the fats is 2.80 % of this batter, and within 3 % of it") {
    limit = Rate{3 * percent, RateBasis::batter};  // 0.04 / (1.04 + 3 x 0.12868)
    CHECK_FALSE(has_caution(planning::plan(run), "allows at most"));
    limit = Rate{2.5 * percent, RateBasis::batter};
    CHECK(has_caution(planning::plan(run), "2.8 % of the batter"));
  }
  SECTION("exactly at the limit is within it") {
    limit = run.pour.formula.additives[0].rate;
    CHECK_FALSE(has_caution(planning::plan(run), "allows at most"));
  }
  SECTION("a limit by the spoon: a tablespoon of 1 g/ml for a pound is 3.26 %") {
    limit = Rate{us_tablespoon / pound, RateBasis::fats};
    run.pour.formula.additives[0].bulk_density = gram_per_millilitre;
    CHECK(has_caution(planning::plan(run), "allows at most 3.2599 % of it"));
  }
}

TEST_CASE("what breaks a limit hears no grams that keep it", "[planning]") {
  // 4 % of the fats against 3 % of them: 3 % of the fats of each batch, on a scale of 0.1 g,
  // downward.
  Run run = paper_run();
  run.pour.formula.additives = {lavender(4 * percent)};
  run.pour.formula.additives[0].limit = Rate{3 * percent, RateBasis::fats};
  const Plan plan = planning::plan(run);
  const Mass fats = plan.batches.front().pour.batter.weighing.fats;
  const std::string most = on_scale(rounded_down(0.03 * fats, 0.1 * gram), 0.1 * gram);
  CHECK(has_caution(plan, most + " with " + trimmed(fats / gram, 1) + " g of fats"));
  CHECK(has_caution(plan, "(\"rate\": \"3 % of fats\")"));
}

namespace {

/// The rate that a caution on a limit proposes.
std::optional<std::string> proposed_rate(const Plan& plan) {
  const std::string before = "(\"rate\": \"";
  for (const auto& caution : plan.cautions) {
    const auto at = caution.text.find(before);
    if (at == std::string::npos) continue;
    const auto begin = at + before.size();
    return caution.text.substr(begin, caution.text.find('"', begin) - begin);
  }
  return std::nullopt;
}

}  // namespace

TEST_CASE("the rate proposed for a broken limit, typed in, breaks it again", "[planning][law]") {
  rc::prop("it draws no caution, and a hundredth more of it would", [] {
    Run run = paper_run();
    const auto basis = [] { return *rc::gen::element(RateBasis::fats, RateBasis::batter); };
    auto scent = lavender(1 * percent);
    const double limit = *rc::gen::inRange(1, 60'000) * 1e-4;  // per cent, to 6 %
    if (*rc::gen::arbitrary<bool>())
      scent.limit_of_finished_soap = limit * percent;
    else
      scent.limit = Rate{limit * percent, basis()};
    scent.rate = Rate{(2 * limit + 0.1) * percent, basis()};
    run.pour.formula.additives = {scent};
    const auto proposed = proposed_rate(planning::plan(run));
    RC_ASSERT(proposed.has_value());
    auto& rate = run.pour.formula.additives[0].rate;
    rate = read_rate(*proposed, {"test", "/rate"});
    RC_ASSERT(!has_caution(planning::plan(run), "allows at most"));
    rate.amount = 1.0101 * std::get<Share>(rate.amount);
    RC_ASSERT(has_caution(planning::plan(run), "allows at most"));
  });
}

TEST_CASE("what keeps within its limit was weighed above it", "[planning][law]") {
  // Rounding to the nearest step put half a step too much into the pot.
  rc::prop("a limited additive is weighed at its rate or below", [] {
    Run run = paper_run();
    const Share most = *rc::gen::inRange(1, 500) * 0.01 * percent;
    auto scent = lavender(most);
    scent.limit = Rate{most, RateBasis::fats};
    run.pour.formula.additives = {scent};
    const auto& weighing = planning::plan(run).pour.batter.weighing;
    for (const auto& ingredient : weighing.ingredients)
      if (ingredient.role == Role::additive)
        RC_ASSERT(ingredient.weighed <= (1 + 1e-9) * most.of_one() * weighing.fats);
  });
}

TEST_CASE("a limit on the finished soap is held against the cured part", "[planning]") {
  // 2 % of fats: of 1000 g fats, 257.35 g water and 128.68 g NaOH with 20 g scent make 1406 g,
  // 1277.4 g when half of the water is gone: 1.566 % of the soap, 1.42 % of the batter.
  Run run = paper_run();
  run.pour.formula.additives = {lavender(2 * percent)};
  auto& limit = run.pour.formula.additives[0].limit_of_finished_soap;
  limit = 1.5 * percent;
  CHECK(has_caution(planning::plan(run),
                    "makes up 1.57 % of the finished soap; its supplier "
                    "allows at most 1.5 % of it"));
  limit = 1.6 * percent;
  CHECK_FALSE(has_caution(planning::plan(run), "of the finished soap"));
  run.pour.formula.water_lost_in_cure.reset();
  CHECK(has_caution(planning::plan(run), "whose weight is not known"));
}

TEST_CASE("the same scent may break its limit in one part alone", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pour.formula.additives = {lavender(1 * percent)};
  run.pipe->formula.additives = {lavender(3 * percent)};
  run.pour.formula.additives[0].limit_of_finished_soap = 1.5 * percent;
  run.pipe->formula.additives[0].limit_of_finished_soap = 1.5 * percent;
  const Plan plan = planning::plan(run);
  CHECK(has_caution(plan, "Topping: lavender makes up"));
  CHECK_FALSE(has_caution(plan, "Base: lavender makes up"));
}

TEST_CASE("a fragrance without any limit is told in each part that has it", "[planning]") {
  Run run = paper_run();
  run.pour.formula.additives = {lavender(1 * percent)};
  CHECK(has_caution(planning::plan(run), "no limit is given for lavender"));
  run.pour.formula.additives[0].limit = Rate{3 * percent, RateBasis::batter};
  CHECK_FALSE(has_caution(planning::plan(run), "no limit is given"));
}
