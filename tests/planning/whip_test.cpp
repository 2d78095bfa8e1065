#include "planning/whip.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using std::chrono::seconds;

namespace {

Run piped_run() {
  Run run = paper_run();  // 48 pieces; 55 ml, 44 g of topping each at 0.8 g/ml
  run.pipe = paper_pipe();
  return run;
}

Limit limit(const Plan& plan, const std::string& what) {
  for (const auto& limit : plan.pipe->limits)
    if (limit.what == what) return limit;
  FAIL("no limit called " + what);
  return {};
}

}  // namespace

TEST_CASE("the weigh-cup's table says how many pieces each reading pipes", "[planning]") {
  // On paper: 480 g usable, 50 ml a piece, a cup of 100 ml planned at 80 g: 480 / (50 x 0.80) = 12
  // pieces; at 76 g 12.6, at 84 g 11.4.
  const auto table = whip_table(480 * gram, 50 * millilitre, {100 * millilitre, 80 * gram},
                                1 * gram_per_millilitre);
  const auto row = [&](double grams) {
    const auto found = std::find_if(table.begin(), table.end(),
                                    [&](const auto& r) { return r.net == grams * gram; });
    REQUIRE(found != table.end());
    return *found;
  };
  CHECK(row(80).is_planned);
  CHECK(row(80).casts == 12);
  CHECK(row(76).casts == 12);
  CHECK(row(84).casts == 11);
  CHECK(std::abs(row(80).overrun - 0.25) < 1e-12);
}

TEST_CASE("a reading a gram or two off the plan has a row of its own", "[planning]") {
  for (const double planned : {78.0, 20.0, 20.9, 83.3, 240.0}) {
    const WeighCup cup{1.25 * planned * millilitre, planned * gram};
    const auto table = whip_table(4800 * gram, 50 * millilitre, cup, 1 * gram_per_millilitre);
    const auto at =
        std::find_if(table.begin(), table.end(), [](const auto& r) { return r.is_planned; });
    REQUIRE(at != table.end());
    REQUIRE(at != table.begin());
    REQUIRE(at + 1 != table.end());
    const Mass near = std::max(1.5 * gram, 0.015 * cup.net);
    CHECK((at + 1)->net - at->net <= near);
    CHECK(at->net - (at - 1)->net <= near);
    CHECK(std::is_sorted(table.begin(), table.end(),
                         [](const auto& a, const auto& b) { return a.net < b.net; }));
  }
}

TEST_CASE("no reading heavier than the plain batter stands in the table", "[planning]") {
  const auto table = whip_table(480 * gram, 50 * millilitre, {100 * millilitre, 95 * gram},
                                1 * gram_per_millilitre);
  CHECK(table.back().net <= 100 * gram);
  CHECK(std::any_of(table.begin(), table.end(), [](const auto& r) { return r.is_planned; }));
}

TEST_CASE("a bowl is at most 60 % full of whipped topping", "[planning]") {
  Run run = piped_run();
  run.pipe->bowl = Bowl{.holds = 4 * litre};
  // 60 % of 4 l is 2.4 l, 1920 g at 0.8 g/ml; less 50 g that stay, 1870 / 44 = 42.5 pieces.
  Plan plan = planning::plan(run);
  CHECK(limit(plan, "bowl").casts == 42);
  CHECK(limit(plan, "bowl").sets);
  REQUIRE(plan.batches.size() == 1);
  CHECK(plan.batches[0].count() == 2);
  CHECK(plan.batches[0].pieces == 24);
  run.pipe->bowl->holds = 5 * litre;
  plan = planning::plan(run);
  CHECK_FALSE(limit(plan, "bowl").sets);
  CHECK(plan.pieces.batches == 1);
  // The same bowl, washed and used again for the same batch.
  run.pipe->bowl->holds = 4 * litre;
  run.batch.whippings = 2;
  plan = planning::plan(run);
  CHECK(plan.pieces.batches == 1);
  REQUIRE(plan.batches[0].whippings.size() == 1);
  CHECK(plan.batches[0].whippings[0].count == 2);
  CHECK(plan.batches[0].whippings[0].casts == 24);
  CHECK(plan.pipe->whippings == 2);
}

TEST_CASE("a run too small for the whisk is told the smallest, and that passes", "[planning]") {
  Run run = piped_run();
  run.sell = 4;
  run.spoilage = {};
  run.pipe->bowl = Bowl{.holds = 4 * litre, .whisk_needs = 600 * millilitre};
  // 600 ml of plain batter at 1 g/ml is 600 g; less 50 g, 550 / 44 = 12.5: 13 pieces.
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("a batch is at least 13: the whisk needs as much") &&
                        Contains("plan 13 pieces to sell"));
  run.sell = 13;
  const Plan plan = planning::plan(run);
  CHECK(limit(plan, "whisk").casts == 13);
  CHECK(plan.pipe->least_casts == 13);
}

TEST_CASE("open time is spent on pieces and on changing bags", "[planning]") {
  Run run = piped_run();  // 55 ml each from bags of 500 ml
  run.pipe->pace = Pace{seconds(15 * 60), seconds(20), seconds(60)};
  Plan plan = planning::plan(run);
  // 50 g stay behind, 62.5 ml: 36 pieces are 720 s and 1980 + 62.5 ml, five bags, four changes of
  // 60 s, 960 s in all. 35 are 700 s and 1987.5 ml, four bags, three changes, 880 s.
  CHECK(limit(plan, "open time").casts == 35);
  CHECK(limit(plan, "open time").sets);
  CHECK(plan.batches[0].pieces == 24);
  run.pipe->pace->open_time = seconds(3600);
  plan = planning::plan(run);
  // 48 pieces: 960 s, 2640 + 62.5 ml, six bags, five changes.
  CHECK(plan.pipe->loads == 6);
  CHECK(plan.pipe->piping == seconds(960 + 300));
}

TEST_CASE("lye by the spoon is counted and timed", "[planning]") {
  Run run = piped_run();
  run.pipe->lye_spoon = LyeSpoon{15 * millilitre, seconds(20)};
  const Plan plan = planning::plan(run);
  const auto& weighing = plan.pipe->batter.weighing;
  REQUIRE(plan.pipe->lye);
  // A third of this lye is NaOH: 1.343 g/ml at 35 degC lies between the 1.3490 (20 degC) and 1.3308
  // (40 degC) of 32 and 34 % lye, Perry's Chemical Engineers' Handbook, table of NaOH densities
  // (from memory), so the spoonfuls lie within 2 % of that.
  const double lye_ml = (weighing.naoh + weighing.water) / gram / 1.345;
  CHECK(std::abs(static_cast<double>(plan.pipe->lye->spoonfuls) - lye_ml / 15) <
        0.02 * lye_ml / 15 + 1);
  CHECK(plan.pipe->lye->altogether == plan.pipe->lye->spoonfuls * seconds(20));
}

TEST_CASE("a lighter whip never pipes fewer pieces", "[planning][law]") {
  rc::prop("pieces fall as the reading grows", [] {
    const Mass usable = *rc::gen::inRange(100, 5000) * gram;
    const Volume each = *rc::gen::inRange(10, 100) * millilitre;
    const WeighCup cup{100 * millilitre, *rc::gen::inRange(400, 950) / 10.0 * gram};
    const auto table = whip_table(usable, each, cup, 1 * gram_per_millilitre);
    for (std::size_t i = 1; i < table.size(); ++i) RC_ASSERT(table[i].casts <= table[i - 1].casts);
  });
}
