#include "planning/cut_loaf.h"

#include "planning/piece_tally.h"
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
using Catch::Matchers::WithinRel;

namespace {

double g(Mass mass) { return mass / gram; }
double ml(Volume volume) { return volume / millilitre; }

/// A slab of 100 x 50 mm filled 20 mm deep with a base of 1 g/ml that keeps all its water, cut into
/// slices of 20 mm along x: five bars of 20 ml.
Run sliced_run() {
  Run run = paper_run();
  run.pour.mould = paper_mould(1, 1);
  run.pour.line = BelowBrim{Length{}};
  run.pour.formula.water_lost_in_cure = Share{};
  run.pour.losses = {};
  run.cut = Cut{.bar = Slices{20 * millimetre}};
  run.label = LabelOrder{};
  run.label->weight_spread.either_way = 0.1 * gram;
  return run;
}

Decoration rod(double diameter_mm, double length_mm, double density) {
  Decoration rod = paper_brick();
  rod.name = "Rod";
  rod.made = Rod{diameter_mm * millimetre, length_mm * millimetre};
  rod.density = density * gram_per_millilitre;
  return rod;
}

Decoration buried(Decoration decoration, std::vector<BuriedAt> places, bool pressed_in = false) {
  decoration.per_cast = static_cast<std::int64_t>(places.size());
  decoration.where = Buried{std::move(places), Length{}, pressed_in};
  return decoration;
}

BuriedAt at(double x, double y, double height, Turned turned = {}) {
  return {x * millimetre, y * millimetre, height * millimetre, turned};
}

Mass part_of(const Plan& plan, const std::string& name, std::size_t bar) {
  for (std::size_t i = 0; i < plan.piece.parts.size(); ++i)
    if (plan.piece.parts[i].name == name) return plan.piece.bars[bar].parts[i];
  FAIL("no part " << name);
  return {};
}

}  // namespace

TEST_CASE("a cut bar is not labelled with the rods of its offcuts", "[planning]") {
  // Trims of 20 mm at either end leave three bars, from -30 mm on.
  Run run = sliced_run();
  run.cut->end_trim = 20 * millimetre;
  run.decorations.push_back(buried(paper_brick(), {at(-39, 0, 5)}));
  const Plan plan = planning::plan(run);
  REQUIRE(plan.piece.bars.size() == 3);
  // The brick reaches from -49 to -29 mm, 1 mm of it into the first bar: 1 x 20 x 10 mm, 0.2 ml.
  CHECK_THAT(g(part_of(plan, "Brick", 0)), WithinAbs(0.2 * 1.03, 1e-6));
  CHECK_THAT(g(part_of(plan, "Paper base", 0)), WithinAbs(20 - 0.2, 1e-6));
  CHECK_THAT(g(part_of(plan, "Brick", 1)), WithinAbs(0, 1e-9));
  CHECK_THAT(g(part_of(plan, "Paper base", 1)), WithinAbs(20, 1e-6));
  CHECK_THAT(g(plan.piece.fresh), WithinAbs(20 + 0.2 * 0.03 / 3, 1e-6));
  CHECK_THAT(g(plan.piece.cut_off.offcuts), WithinAbs(40 + 3.8 * 0.03, 1e-6));
}

TEST_CASE("an embed's room in a bar is not counted at the base's density", "[planning]") {
  // A rod of 10 mm through the middle, 80 mm long: pi/4 x 100 x 20 mm = 1.5708 ml of 2 g/ml in each
  // of the three inner bars, half as much in the outer ones.
  Run run = sliced_run();
  run.decorations.push_back(buried(rod(10, 80, 2), {at(0, 0, 5)}));
  const Plan plan = planning::plan(run);
  const double in_inner = pi / 4 * 100 * 20 / 1000;
  REQUIRE(plan.piece.bars.size() == 5);
  CHECK_THAT(g(part_of(plan, "Rod", 2)), WithinRel(2 * in_inner, 1e-6));
  CHECK_THAT(g(part_of(plan, "Rod", 0)), WithinRel(in_inner, 1e-6));
  CHECK_THAT(g(part_of(plan, "Paper base", 2)), WithinRel(20 - in_inner, 1e-6));
  CHECK_THAT(g(plan.piece.bars[2].fresh), WithinRel(20 + in_inner, 1e-6));
  CHECK_THAT(ml(plan.cut->bars[2].layers.at(0)), WithinRel(20 - in_inner, 1e-6));
  CHECK(plan.piece.lightest_bar % 4 == 0);
}

TEST_CASE("the label starts from the lightest bar, not from the mean", "[planning]") {
  // Heavy bricks in two of five bars: 4 ml of 1.03 g/ml each make those 20.12 g, the others 20.
  Run run = sliced_run();
  run.decorations.push_back(buried(paper_brick(), {at(-20, 0, 5), at(20, 0, 5)}));
  run.decorations.back().density = 3 * gram_per_millilitre;
  const Plan plan = planning::plan(run);
  REQUIRE(plan.label->lightest);
  const Mass lightest = *plan.piece.bars[plan.piece.lightest_bar].cured;
  CHECK_THAT(g(lightest), WithinAbs(20, 1e-6));
  // Less the stated 0.1 g and half the fine scale's 0.1 g.
  CHECK_THAT(g(plan.label->lightest->mass), WithinAbs(20 - 0.1 - 0.05, 1e-6));
  CHECK(plan.label->lightest->mean > lightest);
  CHECK_THAT(plan.label->lightest->because, Contains("lightest bar"));
  CHECK(plan.label->net->stated <= lightest);
}

TEST_CASE("a pour line that is low costs a bar its own share of the top, not the loaf's",
          "[planning]") {
  Run run = sliced_run();
  run.label->weight_spread.either_way = {};
  run.label->weight_spread.pour_line_off_by = 1 * millimetre;
  const Plan plan = planning::plan(run);
  // 20 x 50 x 1 mm = 1 ml of 1 g/ml.
  CHECK_THAT(g(plan.label->lightest->mass), WithinAbs(20 - 1 - 0.05, 1e-4));
}

TEST_CASE("a drizzle over a loaf is shared by the top's area, and one on each bar is whole",
          "[planning]") {
  Run run = sliced_run();
  run.cut->end_trim = 10 * millimetre;  // four bars of 20 mm of 100
  Decoration coat = paper_brick();
  coat.name = "Coat";
  coat.made = Drizzle{50 * square_centimetre, 1 * millimetre};
  coat.density = 1 * gram_per_millilitre;
  run.decorations.push_back(coat);
  Decoration each = paper_brick();
  each.per_piece = 1;
  run.decorations.push_back(each);
  const Plan plan = planning::plan(run);
  REQUIRE(plan.piece.bars.size() == 4);
  // 5 ml over the whole top of 100 mm: 1 g on a bar. Of the bricks each bar has one of 4.12 g.
  CHECK_THAT(g(part_of(plan, "Coat", 1)), WithinAbs(1, 1e-6));
  CHECK_THAT(g(part_of(plan, "Brick", 1)), WithinAbs(4.12, 1e-9));
}

TEST_CASE("of what is set on a loaf without a place the lightest bar is sure of nothing",
          "[planning]") {
  Run run = sliced_run();
  Decoration loose = paper_brick();
  loose.per_cast = 5;
  run.decorations.push_back(loose);
  const Plan plan = planning::plan(run);
  CHECK_THAT(g(plan.piece.bars[0].fresh), WithinAbs(20, 1e-6));
  CHECK_THAT(g(plan.piece.fresh), WithinAbs(20 + 4.12, 1e-6));
  bool said = false;
  for (const auto& caution : plan.cautions)
    said |= caution.text.find("\"per_piece\"") != std::string::npos;
  CHECK(said);
}

TEST_CASE("a bar has of the topping what was piped on it", "[planning]") {
  // An envelope in the middle, 30 mm across, stands on the third bar and 5 mm into its neighbours;
  // the outer bars have none.
  Run run = sliced_run();
  run.pipe = paper_pipe();
  run.pipe->formula.name = "Paper topping";
  run.pipe->trials = {};
  run.pipe->envelope =
      Envelope{EnvelopeForm::cone, 30 * millimetre, 20 * millimetre, Share::of_one(1)};
  run.pipe->fills_headspace = Share{};
  const Plan plan = planning::plan(run);
  CHECK_THAT(g(part_of(plan, "Paper topping", 0)), WithinAbs(0, 1e-9));
  CHECK(part_of(plan, "Paper topping", 2) > part_of(plan, "Paper topping", 1));
  Mass all;
  for (std::size_t bar = 0; bar < 5; ++bar) all += part_of(plan, "Paper topping", bar);
  CHECK_THAT(all / plan.pipe->batter.mass_each, WithinRel(1.0, 1e-6));
  run.cut->top_planing = 1 * millimetre;
  CHECK_THROWS_WITH(planning::plan(run), Contains("/cut/top_planing: planes off"));
}

TEST_CASE("a layer's colour is part of the piece's weight", "[planning]") {
  Run run = paper_run();
  run.pour.layers = {Layer{"Lower", LayerParts{1}, {}}, Layer{"Upper", LayerParts{1}, {}}};
  run.pour.layers[0].colours.push_back({"pink clay", {2 * percent, RateBasis::batter}, {}, {}});
  const Plan plan = planning::plan(run);
  // 100 x 50 x 18 mm of 1 g/ml are 90 g, half of it coloured by 2 %: 0.9 g, but for the scale's
  // step of 0.1 g on all of the colour.
  REQUIRE(plan.piece.parts.size() == 2);
  CHECK(plan.piece.parts[1].name == "pink clay");
  CHECK_THAT(g(plan.piece.parts[1].fresh), WithinAbs(0.9, 0.9 * 0.01));
  CHECK_THAT(g(plan.piece.fresh), WithinAbs(90.9, 0.01));

  run.cut = Cut{.bar = Slices{20 * millimetre}};
  const Plan cut = planning::plan(run);
  CHECK_THAT(g(cut.piece.parts[1].fresh), WithinAbs(0.18, 0.18 * 0.02));
}

TEST_CASE(
    "the names on a label of a cut loaf are of a bar, not of a loaf's base with a bar's embeds",
    "[planning]") {
  Run run = sliced_run();
  run.decorations.push_back(buried(rod(10, 80, 2), {at(0, 0, 5)}));
  const Plan plan = planning::plan(run);
  CHECK_THAT(g(plan.label->as_charged.total), WithinRel(g(plan.piece.fresh), 1e-3));
}

TEST_CASE("a loaf's bar cures by its own weight", "[planning]") {
  Run run = sliced_run();
  run.pour.formula.water_lost_in_cure = 50 * percent;
  const Plan plan = planning::plan(run);
  const auto& cure = *plan.pour.batter.cure;
  CHECK_THAT(g(cure.fresh), WithinAbs(20, 1e-6));
  CHECK_THAT(g(*plan.piece.cured), WithinRel(g(cure.cured), 1e-12));
}

TEST_CASE("a rod as long as its slab passes", "[planning]") {
  Run run = sliced_run();
  run.decorations.push_back(buried(rod(10, 100, 2), {at(0, 0, 5)}));
  std::get<Buried>(run.decorations[0].where).cover = 4 * millimetre;
  const Plan plan = planning::plan(run);
  const auto& embed = plan.decorations[0].fit.embeds.at(0);
  // Beside it 50/2 - 5 mm to the long walls; its ends meet the short ones, as they are to.
  CHECK_THAT(embed.wall_cover / millimetre, WithinAbs(20, 0.01));
  for (const auto& caution : plan.cautions) CHECK_THAT(caution.text, !Contains("to the wall"));
  const double in_bar = pi / 4 * 100 * 20 / 1000;
  CHECK_THAT(g(part_of(plan, "Rod", 0)), WithinRel(2 * in_bar, 1e-6));
  CHECK_THAT(g(part_of(plan, "Rod", 4)), WithinRel(2 * in_bar, 1e-6));
  run.decorations[0].made = Rod{10 * millimetre, 100.1 * millimetre};
  CHECK_THROWS_WITH(planning::plan(run), Contains("sticks out"));
  run.decorations[0].made = Rod{10 * millimetre, 100 * millimetre};
  run.decorations[0].where = Buried{FindPlaces{geometry::Lying::level}, Length{}, false};
  CHECK_NOTHROW(planning::plan(run));
}

TEST_CASE("an embed that lies on the floor passes, and its missing cover is said", "[planning]") {
  Run run = sliced_run();
  run.decorations.push_back(buried(paper_brick(), {at(0, 0, 0)}));
  std::get<Buried>(run.decorations[0].where).cover = 4 * millimetre;
  const Plan plan = planning::plan(run);
  CHECK_THAT(plan.decorations[0].fit.embeds.at(0).floor_cover / millimetre, WithinAbs(0, 0.02));
  bool said = false;
  for (const auto& caution : plan.cautions)
    said |= caution.text.find("Brick has 0 mm to the floor") != std::string::npos;
  CHECK(said);
}

TEST_CASE("of each material of a loaf, bars, offcuts, kerf and planing are the whole",
          "[planning][law]") {
  rc::prop("and the label is never above the lightest bar", [] {
    const auto mm = [](int least, int most) { return *rc::gen::inRange(least, most) * 0.1; };
    Run run = sliced_run();
    run.pour.mould = block_mould(150, 60, 40);
    run.pour.mould.cavities = 1;
    run.pour.line = BelowBrim{mm(0, 60) * millimetre};
    run.pour.formula.water_lost_in_cure = 30 * percent;
    if (*rc::gen::arbitrary<bool>())
      run.pour.layers = {Layer{"Lower", LayerParts{mm(5, 30)}, {}},
                         Layer{"Upper", LayerParts{1}, {}}};
    if (*rc::gen::arbitrary<bool>())
      run.cut->bar = Grid{mm(200, 400) * millimetre, mm(150, 290) * millimetre};
    else
      run.cut->bar = Slices{mm(100, 400) * millimetre};
    run.cut->end_trim = mm(0, 150) * millimetre;
    run.cut->side_trim = mm(0, 40) * millimetre;
    run.cut->top_planing = mm(0, 60) * millimetre;
    run.cut->kerf = mm(0, 20) * millimetre;
    run.cut->face_planing = mm(0, 5) * millimetre;
    const bool pressed_in = *rc::gen::arbitrary<bool>();
    const Turned turned{Angle::in_degrees(mm(0, 3600)), {}, Angle::in_degrees(mm(-300, 300))};
    run.decorations.push_back(
        buried(rod(8, mm(200, 900), mm(8, 30)), {at(mm(-200, 200), -14, 6, turned)}, pressed_in));
    run.decorations.push_back(
        buried(paper_ball(), {at(mm(-550, -100), 14, 5), at(mm(100, 550), 14, 12)}, pressed_in));
    std::optional<Plan> planned;
    try {
      planned = planning::plan(run);
    } catch (const UserError&) {
      RC_DISCARD("an embed beyond the wall, or a bar larger than the loaf");
    }
    const CutTally& cut = *planned->cut;
    Volume base;
    for (const Parted& layer : cut.layers) base += layer.whole();
    const Volume poured = planned->pour.batter.volume_each;
    RC_ASSERT(abs(base - poured) < 1e-6 * poured);
    Mass whole = poured * planned->pour.batter.density;
    for (std::size_t i = 0; i < run.decorations.size(); ++i) {
      const Volume of_loaf =
          static_cast<double>(run.decorations[i].per_cast) * planned->decorations[i].volume_each;
      RC_ASSERT(abs(cut.inclusions[i].whole() - of_loaf) < 1e-6 * of_loaf);
      whole += of_loaf * run.decorations[i].density;
    }
    const auto& piece = planned->piece;
    Mass all = piece.cut_off.offcuts + piece.cut_off.kerf + piece.cut_off.planing;
    for (const BarMass& bar : piece.bars) all += bar.fresh;
    RC_ASSERT(abs(all - whole) < 1e-6 * whole);
    for (const BarMass& bar : piece.bars) RC_ASSERT(planned->label->net->stated <= *bar.cured);
  });
}
