
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <utility>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

BuriedAt at(double x, double y, double height, Turned turned = {}) {
  return {x * millimetre, y * millimetre, height * millimetre, turned};
}

/// The paper cavity, 100 x 50 x 20 mm filled 18 mm deep, with bricks of 20 x 20 x 10 mm.
Run run_with_bricks(std::vector<BuriedAt> places, bool pressed_in = false) {
  Run run = paper_run();
  Decoration brick = paper_brick();
  brick.per_cast = static_cast<std::int64_t>(places.size());
  brick.where = Buried{std::move(places), 3 * millimetre, pressed_in};
  run.decorations.push_back(brick);
  return run;
}

double mm(Length length) { return length / millimetre; }
double ml(Volume volume) { return volume / millilitre; }

}  // namespace

TEST_CASE("a buried brick takes its room off the batter, and its cover is measured", "[planning]") {
  const Plan plan = planning::plan(run_with_bricks({at(0, 0, 5)}));
  const auto& embed = plan.decorations[0].fit.embeds.at(0);
  // On paper: 5 mm over the floor, 18 - 15 = 3 mm under the line, (50 - 20) / 2 = 15 mm to the
  // nearer walls. It is 20 x 20 x 10 mm = 4 ml, so 90 - 4 = 86 ml are poured.
  CHECK_THAT(mm(embed.floor_cover), WithinAbs(5, 1e-6));
  CHECK_THAT(mm(embed.line_cover), WithinAbs(3, 1e-6));
  CHECK_THAT(mm(embed.wall_cover), WithinAbs(15, 1e-6));
  CHECK_THAT(ml(plan.pour.displaced), WithinAbs(4, 1e-9));
  CHECK_THAT(ml(plan.pour.batter.volume_each), WithinAbs(86, 1e-9));
  CHECK(plan.pour.poured_to == plan.pour.line);
}

TEST_CASE("what is pressed in afterwards raises a lower pour to the line", "[planning]") {
  const Plan plan = planning::plan(run_with_bricks({at(0, 0, 5)}, true));
  // 86 ml stand 86 / 5 = 17.2 mm deep on 100 x 50 mm.
  CHECK_THAT(mm(plan.pour.poured_to), WithinAbs(17.2, 1e-6));
  CHECK_THAT(ml(plan.pour.batter.volume_each), WithinAbs(86, 1e-9));
}

TEST_CASE("a brick that stands out of the base displaces what is below the line only",
          "[planning]") {
  const Angle quarter = Angle::in_degrees(90);
  const Plan plan = planning::plan(run_with_bricks({at(0, 0, 4, {{}, quarter, {}})}));
  const auto& fit = plan.decorations[0].fit;
  // Turned about y it is 10 x 20 mm wide and 20 mm tall: from 4 to 24 mm, 14 mm of them below the
  // line and 2 mm between line and brim. 200 mm2 x 14 mm and x 2 mm.
  CHECK_THAT(mm(fit.embeds.at(0).line_cover), WithinAbs(-6, 1e-6));
  CHECK_THAT(ml(fit.displaced), WithinAbs(2.8, 1e-9));
  CHECK_THAT(ml(fit.in_headspace), WithinAbs(0.4, 1e-9));
  // The headspace is 10 ml less that.
  CHECK_THAT(ml(plan.pour.headspace_volume), WithinAbs(9.6, 1e-9));
}

TEST_CASE("two bricks side by side know their gap, and may not meet", "[planning]") {
  const Plan plan = planning::plan(run_with_bricks({at(-20, 0, 5), at(15, 0, 5)}));
  // Faces at -10 and 5 mm.
  CHECK_THAT(mm(*plan.decorations[0].fit.embeds.at(0).apart), WithinAbs(15, 1e-6));
  CHECK_THROWS_WITH(planning::plan(run_with_bricks({at(0, 0, 5), at(10, 5, 5)})),
                    Contains("/decorations/0/buried/places/1: is too close: it cuts into place 1"));
}

TEST_CASE("bricks of two decorations may not meet either", "[planning]") {
  Run run = run_with_bricks({at(0, 0, 5)});
  run.decorations.push_back(run.decorations[0]);
  run.decorations[1].name = "Second brick";
  CHECK_THROWS_WITH(planning::plan(run), Contains("one of Second brick cuts into one of Brick"));
}

TEST_CASE("an embed that leaves the cavity is refused with what would fit", "[planning]") {
  CHECK_THROWS_WITH(planning::plan(run_with_bricks({at(0, 18, 5)})),
                    Contains("/decorations/0/buried/places/0: Brick sticks out"));
  CHECK_THROWS_WITH(planning::plan(run_with_bricks({at(0, 0, 18.5)})),
                    Contains("lies above the pour line"));
  Run run = run_with_bricks({at(0, 0, 1)});
  std::get<InMould>(run.decorations[0].made).mould = block_mould(60, 60, 10);
  // 60 x 60 mm do not go into 50 mm, however they are turned: with 3 mm cover 44 mm would.
  CHECK_THROWS_WITH(planning::plan(run), Contains("across would fit with 3 mm cover"));
}

TEST_CASE("too little cover is said with both figures", "[planning]") {
  const Plan plan = planning::plan(run_with_bricks({at(0, 0, 1)}));
  bool said = false;
  for (const auto& caution : plan.cautions)
    said |=
        caution.text.find("Brick has 1 mm to the floor where you want 3 mm") != std::string::npos;
  CHECK(said);
}

TEST_CASE("the search for places gives as many as are asked for, or says how many fit",
          "[planning]") {
  Run run = run_with_bricks({at(0, 0, 5)});
  run.decorations[0].per_cast = 4;
  run.decorations[0].where = Buried{FindPlaces{geometry::Lying::level}, 3 * millimetre, false};
  const Plan plan = planning::plan(run);
  REQUIRE(plan.decorations[0].fit.embeds.size() == 4);
  CHECK_THAT(ml(plan.pour.displaced), WithinAbs(16, 1e-9));
  // Between walls 3 mm in, 94 x 44 mm hold 23 x 23 mm tiles less 3: four by one, or 4 x 1 more at
  // most; a hundred do not fit.
  run.decorations[0].per_cast = 100;
  CHECK_THROWS_WITH(planning::plan(run), Contains("of 100 fit with 3 mm cover"));
}

TEST_CASE("a search is made once for what it depends on, and again when that changes",
          "[planning]") {
  MeasureMemory memory;
  Run run = run_with_bricks({at(0, 0, 5)});
  run.decorations[0].made = Rod{7.77 * millimetre, 13 * millimetre};
  run.decorations[0].per_cast = 3;
  const auto searched = [&](Length cover) {
    run.decorations[0].where = Buried{FindPlaces{geometry::Lying::level}, cover, false};
    bool told = false;
    const Plan plan =
        planning::plan(run, {.progress = [&](double) { told = true; }, .memory = &memory});
    const Length least = cover - 1e-5 * millimetre;  // packed() proves it but for a hair
    for (const auto& embed : plan.decorations[0].fit.embeds) {
      CHECK(embed.wall_cover >= least);
      CHECK(embed.apart.value() >= least);
    }
    return std::pair(told, plan.decorations[0].fit.embeds.at(0).place.move_mm);
  };
  const auto first = searched(3 * millimetre);
  CHECK(first.first);
  run.sell += 5;
  run.decorations[0].material = "another base";
  const auto second = searched(3 * millimetre);
  CHECK_FALSE(second.first);
  CHECK(second.second == first.second);
  CHECK(searched(4 * millimetre).first);  // which the places for 3 mm need not have
  run.pour.line = FromFloor{17 * millimetre};
  CHECK(searched(3 * millimetre).first);
  CHECK(memory.packings.count() == 3);
}

TEST_CASE("a ball on top meets it in the circle of a spherical cap", "[planning]") {
  Run run = paper_run();
  run.decorations.push_back(paper_ball());
  run.decorations[0].where = OnTop{.pressed_in = 2 * millimetre, .peak_flat = 14 * millimetre};
  const DecorationFit fit = planning::plan(run).decorations[0].fit;
  // Spherical cap of height h in a ball of radius R: circle of radius sqrt(h (2 R - h)), volume pi
  // h^2 (3 R - h) / 3 (Zwillinger, CRC Standard Mathematical Tables): 6 mm and 117.286 mm3. Facets
  // lie a little inside.
  CHECK_THAT(mm(*fit.contact), WithinAbs(12, 0.05));
  CHECK_THAT(fit.sunk / cubic_millimetre, WithinAbs(117.286, 1));
  CHECK_THAT(mm(*fit.stands_proud), WithinAbs(18, 1e-6));
  run.decorations[0].where = OnTop{.pressed_in = 25 * millimetre};
  CHECK_THROWS_WITH(planning::plan(run), Contains("/decorations/0/on_top/pressed_in: is 25 mm"));
}

TEST_CASE("a peak narrower than the circle is said", "[planning]") {
  Run run = paper_run();
  run.decorations.push_back(paper_ball());
  run.decorations[0].where = OnTop{.pressed_in = 2 * millimetre, .peak_flat = 8 * millimetre};
  const auto said = [&](const std::string& words) {
    const Plan plan = planning::plan(run);
    return std::any_of(plan.cautions.begin(), plan.cautions.end(),
                       [&](const Remark& r) { return r.text.find(words) != std::string::npos; });
  };
  CHECK(said("the peak is flat over 8 mm (0.31 in) only"));
  run.decorations[0].where = OnTop{.pressed_in = Length{}};
  CHECK(said("stands on a point and will roll"));
}

TEST_CASE("rods and drizzles are volumes by their measures", "[planning]") {
  Run run = paper_run();
  Decoration rod = paper_brick();
  rod.made = Rod{10 * millimetre, 90 * millimetre};
  rod.where = Buried{std::vector{at(0, 0, 4)}, 3 * millimetre, false};
  Decoration drizzle = paper_brick();
  drizzle.made = Drizzle{12 * square_centimetre, 1.5 * millimetre};
  run.decorations = {rod, drizzle};
  const Plan plan = planning::plan(run);
  // pi / 4 x 10^2 x 90 mm3 and 12 cm2 x 1.5 mm.
  CHECK_THAT(ml(plan.decorations[0].volume_each), WithinAbs(7.06858, 1e-4));
  CHECK_THAT(ml(plan.pour.displaced), WithinAbs(7.06858, 1e-4));
  CHECK_THAT(ml(plan.decorations[1].volume_each), WithinAbs(1.8, 1e-9));
}

TEST_CASE("displaced and poured make up what the cavity holds to the line", "[planning][law]") {
  rc::prop("displaced + poured = V(line), wherever the brick lies and however it is turned", [] {
    const auto turn = [] { return Angle::in_degrees(*rc::gen::inRange(0, 360)); };
    const Turned turned{turn(), turn(), turn()};
    const bool pressed_in = *rc::gen::arbitrary<bool>();
    Run run = run_with_bricks({at(*rc::gen::inRange(-30, 31), *rc::gen::inRange(-7, 8),
                                  *rc::gen::inRange(1, 17), turned)},
                              pressed_in);
    const Plan plan = planning::plan(run);
    const Volume sum = plan.pour.displaced + plan.pour.batter.volume_each;
    RC_ASSERT(std::abs(ml(sum) - 90) < 1e-9);
    RC_ASSERT(plan.pour.poured_to <= plan.pour.line + 1e-6 * millimetre);
  });
}

TEST_CASE("layers round embeds still sum to the pour", "[planning][law]") {
  rc::prop("layer volumes sum to what is poured", [] {
    Run run = run_with_bricks({at(0, 0, *rc::gen::inRange(1, 7))});
    run.pour.layers = {{"Low", LayerParts{static_cast<double>(*rc::gen::inRange(1, 5))}, {}},
                       {"High", LayerParts{1}, {}}};
    const Plan plan = planning::plan(run);
    Volume sum;
    for (const auto& layer : plan.pour.layers) sum += layer.volume_each;
    RC_ASSERT(std::abs(ml(sum - plan.pour.batter.volume_each)) < 1e-6);
    const double ratio = plan.pour.layers[0].volume_each / plan.pour.layers[1].volume_each;
    RC_ASSERT(std::abs(ratio - std::get<LayerParts>(run.pour.layers[0].amount).parts) < 1e-6);
  });
}
