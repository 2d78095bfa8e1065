#include "planning/plan.h"

#include "chemistry/lye_need.h"
#include "sample_run.h"
#include "units/printing.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

TEST_CASE("a run worked on paper comes out the same", "[planning]") {
  // On paper: 46 / 0.96 = 47.92, so 48 pieces; 48 cavities, so one filling. To 2 mm below a 20 mm
  // brim: 100 x 50 x 18 mm = 90 ml, 90 g at 1 g/ml, 4320 g in 48. Overpour 2 % 86.4, pot 20, jugs
  // 10, test piece 60: 4496.4 g to make.
  const Plan plan = planning::plan(paper_run());
  CHECK(plan.pieces.make == 48);
  CHECK(plan.pieces.fillings == 1);
  CHECK_THAT(plan.pour.batter.volume_each / millilitre, WithinAbs(90, 1e-9));
  CHECK_THAT(plan.pour.batter.in_pieces / gram, WithinAbs(4320, 1e-6));
  // One gram of fat takes 190 / 56.1053 x 39.99677 / 1000 x 0.95 = 0.128676 g NaOH (IUPAC 2021
  // atomic weights) and twice that of water: 1.386029 g batter. 4496.4 / 1.386029 = 3244.09, so
  // 3245 g of fat on a 1 g scale; 3245 x 0.128676 = 417.55 g NaOH, rounded down to 417.5; water
  // 835.0.
  const auto& weighing = plan.pour.batter.weighing;
  CHECK(fixed(weighing.fats / gram, 0) == "3245");
  CHECK(fixed(weighing.naoh / gram, 1) == "417.5");
  CHECK(fixed(weighing.water / gram, 0) == "835");
  // Superfat as it comes out: 1 - 417.5 / (3245 x 0.190 x 0.712888) = 1 - 417.5 / 439.53 = 5.01 %.
  CHECK_THAT(weighing.superfat.nominal.in_percent(), WithinAbs(5.012, 0.002));
  // Cured: 90 g less half of its water, 90 x (1 - 0.5 x 835 / 4497.5) = 81.65 g.
  REQUIRE(plan.piece.cured);
  CHECK_THAT(*plan.piece.cured / gram, WithinAbs(81.65, 0.01));
}

TEST_CASE("exactly 24 pieces stay 24 through spoilage in per cent", "[planning]") {
  Run run = paper_run();
  run.sell = 18;
  run.spoilage = 25 * percent;  // 18 / 0.75 is 24 exactly
  CHECK(planning::plan(run).pieces.make == 24);
  run.sell = 21;
  run.spoilage = 12.5 * percent;  // 21 / 0.875 is 24 exactly
  CHECK(planning::plan(run).pieces.make == 24);
  run.pour.mould.owned = 2;  // of 6 cavities
  CHECK(planning::plan(run).pieces.fillings == 2);
}

TEST_CASE("a fill deeper than the cavity is refused with the cavity's depth", "[planning]") {
  Run run = paper_run();
  run.pour.line = FromFloor{21 * millimetre};
  CHECK_THROWS_WITH(
      planning::plan(run),
      Contains("paper.run.json: /pour/line: a fill of 21 mm is deeper than the cavity"));
  run.pour.line = BelowBrim{20 * millimetre};
  CHECK_THROWS_WITH(planning::plan(run), Contains("leaves nothing to fill"));
  run.pour.line = FromFloor{20 * millimetre};
  CHECK_NOTHROW(planning::plan(run));
}

TEST_CASE("what goes in comes out, to the last printed digit", "[planning][law]") {
  rc::prop("ingredients sum to the batter; pieces and losses sum to the batter", [] {
    Run run = paper_run();
    run.sell = *rc::gen::inRange(1, 400);
    run.spoilage = *rc::gen::inRange(0, 30) * percent;
    run.pour.losses.overpour = *rc::gen::inRange(0, 80) / 10.0 * percent;
    const double large = *rc::gen::element(0.1, 1.0, 2.0, 5.0);
    run.scales.large.step = large * gram;
    run.scales.fine.step = *rc::gen::element(0.01, 0.1) * gram;
    const Plan plan = planning::plan(run);
    const auto& batter = plan.pour.batter;
    // Sum the printed texts in thousandths, as a person with pencil would.
    std::int64_t printed = 0;
    for (const auto& ingredient : batter.weighing.ingredients)
      printed += std::llround(
          1000 * std::stod(fixed(ingredient.weighed / gram, decimals_for(ingredient.step))));
    RC_ASSERT(printed == std::llround(1000 * std::stod(fixed(batter.weighing.batter / gram, 2))));
    RC_ASSERT(abs(batter.in_pieces + batter.lost - batter.weighing.batter) <
              1e-9 * batter.in_pieces);
    RC_ASSERT(batter.weighing.superfat.nominal >= Share{});
  });
}

TEST_CASE("a batch never runs short because of the scales", "[planning][law]") {
  rc::prop("batter weighed >= batter needed", [] {
    Run run = paper_run();
    run.sell = *rc::gen::inRange(1, 200);
    run.scales.large.step = *rc::gen::element(0.1, 1.0, 5.0) * gram;
    const Plan plan = planning::plan(run);
    const auto& losses = run.pour.losses;
    const Mass needed = plan.pour.batter.in_pieces * (1 + losses.overpour.of_one()) + losses.pot +
                        losses.jugs + losses.test_piece;
    RC_ASSERT(plan.pour.batter.weighing.batter >= needed - 1e-6 * gram);
  });
}

TEST_CASE("twice the pieces need twice the mass in the moulds", "[planning][law]") {
  rc::prop("in_pieces is linear in pieces", [] {
    Run run = paper_run();
    run.spoilage = Share{};
    run.sell = *rc::gen::inRange(1, 300);
    const Mass once = planning::plan(run).pour.batter.in_pieces;
    run.sell *= 2;
    const Mass twice = planning::plan(run).pour.batter.in_pieces;
    RC_ASSERT(abs(twice - 2 * once) <= 1e-12 * twice);
  });
}

TEST_CASE("more superfat never means more alkali", "[planning][law]") {
  rc::prop("alkali falls as superfat grows, for one mass of fats", [] {
    const int less = *rc::gen::inRange(0, 30);
    const int more = *rc::gen::inRange(less, 31);
    const auto lean = paper_formula(std::to_string(less) + " %");
    const auto rich = paper_formula(std::to_string(more) + " %");
    const std::vector<Mass> fats{1000 * gram};
    RC_ASSERT(chemistry::alkalis_for(rich, fats, {}, {}).front() <=
              chemistry::alkalis_for(lean, fats, {}, {}).front());
  });
}

TEST_CASE("a decoration of two halves takes two cavities and every loss is melted", "[planning]") {
  Run run = paper_run();
  run.sell = 24;
  run.spoilage = Share{};
  Decoration bead_made = paper_ball();
  bead_made.per_cast = 2;
  bead_made.density = 1 * gram_per_millilitre;
  bead_made.spares = 25 * percent;
  bead_made.melt_loss = 10 * percent;
  bead_made.left_in_jug = 2 * gram;
  bead_made.time_per_tray_fill = std::chrono::seconds(240);
  run.decorations.push_back(bead_made);
  const DecorationTally bead = planning::plan(run).decorations.front();
  // On paper: 24 x 2 x 1.25 = 60 beads, 120 halves, 12 fills of a tray of 10. A bead of 20 mm is
  // 4/3 pi 1000 mm3 = 4.18879 ml. (60 x 4.18879 + 12 x 2) / 0.9 = 305.92, on a 1 g scale 306 g.
  CHECK(bead.casts == 60);
  CHECK(bead.cavity_fills == 120);
  CHECK(bead.tray_fills == 12);
  CHECK(bead.time == std::chrono::seconds(48 * 60));
  CHECK_THAT(bead.volume_each / millilitre, WithinAbs(4.18879, 1e-4));
  CHECK(fixed(bead.make / gram, 1) == "306.0");
}

TEST_CASE("the cautions of lye stand on every plan, the worst first", "[planning]") {
  const Plan plan = planning::plan(paper_run());
  const bool has_lye = std::any_of(plan.cautions.begin(), plan.cautions.end(), [](const Remark& r) {
    return r.text.find("never water onto alkali") != std::string::npos;
  });
  CHECK(has_lye);
  CHECK(std::is_sorted(plan.cautions.begin(), plan.cautions.end(),
                       [](const Remark& a, const Remark& b) { return a.severity > b.severity; }));
}

TEST_CASE("another number from one measuring is planned as a run of that number", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.decorations = {paper_ball()};
  run.batch.pieces = 20;
  const Measured once = measured(run);
  BatchTrials trials(run, once);
  rc::prop("whatever the number", [&] {
    const auto sell = *rc::gen::inRange<std::int64_t>(1, 500);
    const Plan from_once = plan_for(sell, run, once, trials);
    Run other = run;
    other.sell = sell;
    const Plan anew = planning::plan(other);
    RC_ASSERT(from_once.pieces.sell == sell);
    RC_ASSERT(from_once.pieces.batches == anew.pieces.batches);
    RC_ASSERT(from_once.batches.size() == anew.batches.size());
    RC_ASSERT(from_once.pour.batter.weighing.naoh == anew.pour.batter.weighing.naoh);
    RC_ASSERT(from_once.pipe->batter.weighing.batter == anew.pipe->batter.weighing.batter);
    RC_ASSERT(from_once.decorations[0].make == anew.decorations[0].make);
    RC_ASSERT(from_once.cautions.size() == anew.cautions.size());
    for (std::size_t i = 0; i < anew.cautions.size(); ++i)
      RC_ASSERT(from_once.cautions[i].text == anew.cautions[i].text);
  });
}
