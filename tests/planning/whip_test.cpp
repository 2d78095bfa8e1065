#include "planning/whip.h"

#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace brimwright;
using namespace brimwright::planning;
using std::chrono::seconds;

namespace {

Run piped_run() {
  Run run = paper_run();  // 48 pieces; 55 ml, 44 g of topping each at 0.8 g/ml
  run.pipe = paper_pipe();
  return run;
}

WhipLimit limit(const Plan& plan, const std::string& what) {
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
  REQUIRE(table.size() == 7);
  CHECK(table[3].is_planned);
  CHECK(table[3].pieces == 12);
  CHECK(table[2].net == 76 * gram);
  CHECK(table[2].pieces == 12);
  CHECK(table[4].net == 84 * gram);
  CHECK(table[4].pieces == 11);
  CHECK(std::abs(table[3].overrun - 0.25) < 1e-12);
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
  CHECK(limit(plan, "bowl").pieces == 42);
  CHECK(limit(plan, "bowl").binds);
  CHECK(plan.pipe->whippings == 2);
  run.pipe->bowl->holds = 5 * litre;
  plan = planning::plan(run);
  CHECK_FALSE(limit(plan, "bowl").binds);
  CHECK(plan.pipe->whippings == 1);
}

TEST_CASE("a run too small for the whisk is told the smallest", "[planning]") {
  Run run = piped_run();
  run.sell = 4;
  run.pipe->bowl = Bowl{.holds = 4 * litre, .whisk_catches = 600 * millilitre};
  const Plan plan = planning::plan(run);
  // 600 ml of plain batter at 1 g/ml is 600 g; less 50 g, 550 / 44 = 12.5: 13 pieces.
  CHECK(limit(plan, "whisk").pieces == 13);
  CHECK(limit(plan, "whisk").binds);
  CHECK(plan.pipe->least_pieces == 13);
  CHECK(std::any_of(plan.cautions.begin(), plan.cautions.end(), [](const Remark& r) {
    return r.text.find("the smallest run is 13") != std::string::npos;
  }));
}

TEST_CASE("open time is spent on pieces and on changing bags", "[planning]") {
  Run run = piped_run();  // 55 ml each from bags of 500 ml
  run.pipe->pace = Pace{seconds(15 * 60), seconds(20), seconds(60)};
  const Plan plan = planning::plan(run);
  // 36 pieces are 720 s and 1980 ml: four bags, three changes of 60 s, 900 s in all. A 37th would
  // be 20 s and a fifth bag more.
  CHECK(limit(plan, "open time").pieces == 36);
  CHECK(limit(plan, "open time").binds);
  // 48 pieces: 960 s, 2640 ml, six bags, five changes.
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
    for (std::size_t i = 1; i < table.size(); ++i)
      RC_ASSERT(table[i].pieces <= table[i - 1].pieces);
  });
}
