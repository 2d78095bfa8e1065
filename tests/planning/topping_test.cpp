#include "planning/topping.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

TEST_CASE("topping is kept as volume, and its mass follows the whip", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  const Plan plan = planning::plan(run);
  // On paper: trials of 30 and 34 g from a cup of 100 ml that read 64 g: 32 / 0.64 = 50 ml to be
  // seen. Half of a headspace of 100 x 50 x 2 mm = 10 ml is 5 ml: 55 ml each, 44 g at a whip of
  // 0.80 g/ml.
  CHECK_THAT(plan.pipe->visible_each / millilitre, WithinAbs(50, 1e-9));
  CHECK_THAT(plan.pipe->batter.volume_each / millilitre, WithinAbs(55, 1e-9));
  CHECK_THAT(plan.pipe->batter.mass_each / gram, WithinAbs(44, 1e-9));
  CHECK_THAT(plan.pipe->batter.in_pieces / gram, WithinAbs(48 * 44, 1e-6));
  // Overrun as whipped foods define it: 1.00 / 0.80 - 1 = 25 %.
  CHECK_THAT(plan.pipe->overrun, WithinRel(0.25, 1e-12));
  // (2112 + 50) g at 0.8 g/ml is 2702.5 ml and a little: six bags of 500 ml.
  CHECK(plan.pipe->loads == 6);
}

TEST_CASE("a heavier whip today pipes fewer pieces, and the plan says how many short",
          "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->whip_now = WeighCup{100 * millilitre, 80 * gram};
  CHECK(planning::plan(run).pipe->casts_now == 48);  // the planned whip pipes what was planned
  run.pipe->whip_now = WeighCup{100 * millilitre, 88 * gram};
  const Plan plan = planning::plan(run);
  CHECK(plan.pipe->casts_now == 43);  // 48 x 80 / 88 = 43.6
  bool said = false;
  for (const auto& caution : plan.cautions)
    said = said || caution.text.find(", 5 short") != std::string::npos;
  CHECK(said);
}

TEST_CASE("an envelope is a cone or a dome of which a share is topping", "[planning]") {
  Pipe pipe = paper_pipe();
  pipe.trials.reset();
  // Handbook solids (Zwillinger, CRC Standard Mathematical Tables): cone pi r^2 h / 3, half an
  // ellipsoid 2/3 pi r^2 h. Diameter 60, height 40 mm: 37.699 and 75.398 ml; 70 % of each.
  pipe.envelope = Envelope{EnvelopeForm::cone, 60 * millimetre, 40 * millimetre, 70 * percent};
  CHECK_THAT(visible_topping(pipe).volume / millilitre, WithinAbs(0.7 * 37.6991, 1e-3));
  pipe.envelope = Envelope{EnvelopeForm::dome, 60 * millimetre, 40 * millimetre, 70 * percent};
  CHECK_THAT(visible_topping(pipe).volume / millilitre, WithinAbs(0.7 * 75.3982, 1e-3));
}

TEST_CASE("beads are the tip's opening, swollen, along the path, by the maker's hand",
          "[planning]") {
  Pipe pipe = paper_pipe();
  pipe.trials.reset();
  Tip round{.name = "round 10 mm", .opening = geometry::RoundOpening{5 * millimetre}};
  pipe.beads = Beads{round, 1.2, {geometry::Ring{20 * millimetre}}};
  // Pappus: section pi 25 mm2, swollen by 1.2, along 2 pi 20 mm: 11.8435 ml.
  CHECK_THAT(visible_topping(pipe).volume / millilitre, WithinAbs(11.8435, 1e-3));
  pipe.beads->tip.hand = HandCorrection{1.1, 4};
  CHECK_THAT(visible_topping(pipe).volume / millilitre, WithinAbs(1.1 * 11.8435, 1e-3));
}

TEST_CASE("trials outrank beads, and say what hand laid them down", "[planning]") {
  Pipe pipe = paper_pipe();  // trials of 50 ml
  Tip round{.name = "round 10 mm", .opening = geometry::RoundOpening{5 * millimetre}};
  pipe.beads = Beads{round, 1, {geometry::Ring{20 * millimetre}, geometry::Ring{20 * millimetre}}};
  const VisibleTopping visible = visible_topping(pipe);
  CHECK_THAT(visible.volume / millilitre, WithinAbs(50, 1e-9));
  REQUIRE(visible.suggested_correction);
  // Two rings of 9.8696 ml each (Pappus): 50 / 19.7392.
  CHECK_THAT(visible.suggested_correction->correction, WithinRel(2.53303, 1e-4));
  CHECK(visible.suggested_correction->trials == 2);
}

TEST_CASE("every change of bag that loses topping is made up for", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->losses.each_bag_change = 10 * gram;
  const Plan plan = planning::plan(run);
  // 2112 g in the pieces, 50 g stay and six bags are changed five times: 2212 g at least, which at
  // 0.8 g/ml still goes into six bags of 500 ml.
  CHECK(plan.pipe->loads == 6);
  CHECK(plan.pipe->batter.weighing.batter >= 2212 * gram);
  CHECK(plan.pipe->batter.weighing.batter < 2214 * gram);
}

TEST_CASE("a weigh-cup heavier than the plain batter is a slip, and refused", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->whip = WeighCup{100 * millilitre, 140 * gram};
  CHECK_THROWS_WITH(planning::plan(run), Contains("/pipe/whip: reads 1.40 g/ml, heavier than"));
}

TEST_CASE("the planned whip always pipes the planned pieces", "[planning][law]") {
  rc::prop("pieces now >= pieces of the batch when the whip is as planned", [] {
    Run run = paper_run();
    run.sell = *rc::gen::inRange(1, 200);
    run.pipe = paper_pipe();
    run.pipe->whip = WeighCup{100 * millilitre, *rc::gen::inRange(400, 1000) / 10.0 * gram};
    run.pipe->whip_now = run.pipe->whip;
    const Plan plan = planning::plan(run);
    RC_ASSERT(*plan.pipe->casts_now >= plan.batches.front().casts);
  });
}
