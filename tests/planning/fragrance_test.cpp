#include "planning/fragrance.h"

#include "planning/cautions.h"
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

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

TEST_CASE("a bottle is shared over batches and whippings, and all shares together do not empty it twice",
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
