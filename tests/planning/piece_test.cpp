#include "planning/piece.h"

#include "geometry/surface/enclosed_volume.h"
#include "planning/measured_piece.h"
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// The paper cavity with half of its headspace filled and a cone 40 mm wide and 40 mm tall on it.
Run coned_run() {
  Run run = paper_run();
  run.pipe = paper_pipe();
  run.pipe->trials.reset();
  run.pipe->envelope = Envelope{EnvelopeForm::cone, 40 * millimetre, 40 * millimetre, 80 * percent};
  return run;
}

double mm(Length length) { return length / millimetre; }

}  // namespace

TEST_CASE("a piece is as tall as base, recess and topping together", "[planning]") {
  const Plan plan = planning::plan(coned_run());
  REQUIRE(plan.piece.size);
  // Half of the 2 mm headspace is filled, so the cone stands 19 mm up: 59 mm in all.
  CHECK_THAT(mm(plan.piece.size->height), WithinAbs(59, 1e-6));
  CHECK_THAT(mm(plan.piece.size->width), WithinAbs(100, 1e-6));
  CHECK_THAT(mm(plan.piece.size->depth), WithinAbs(50, 1e-6));
}

TEST_CASE("a ball on the topping makes the piece taller by what stands proud", "[planning]") {
  Run run = coned_run();
  run.pipe->envelope->form = EnvelopeForm::dome;
  run.decorations.push_back(paper_ball());
  run.decorations[0].where = OnTop{.pressed_in = 3 * millimetre};
  CHECK_THAT(mm(planning::plan(run).piece.size->height), WithinAbs(59 + 17, 1e-3));
}

TEST_CASE("trials alone do not say how tall a piece is", "[planning]") {
  Run run = paper_run();
  run.pipe = paper_pipe();
  CHECK_FALSE(planning::plan(run).piece.size);
  run.dust.push_back(
      {"mica", DustByArea{milligram / square_centimetre, 50 * percent, 50 * percent}});
  CHECK_THROWS_WITH(planning::plan(run), Contains("/dust: goes by the surface"));
}

TEST_CASE("dust goes by the surface that the air sees, and what misses it is bought too",
          "[planning]") {
  Run run = coned_run();
  run.pipe->fills_headspace = Share{};
  run.dust.push_back(
      {"mica", DustByArea{2 * milligram / square_centimetre, 50 * percent, 40 * percent}});
  const Plan plan = planning::plan(run);
  // A cone's side is pi r sqrt(r^2 + h^2) = 2809.9 mm2; half of it, 2 mg/cm2: 28.10 mg on a piece,
  // of 70.25 mg dusted.
  REQUIRE(plan.dust[0].exposed);
  CHECK_THAT(*plan.dust[0].exposed / square_millimetre, WithinRel(2809.93, 0.01));
  CHECK_THAT(plan.dust[0].on_piece / milligram, WithinRel(28.10, 0.01));
  CHECK_THAT(plan.dust[0].each / milligram, WithinRel(70.25, 0.01));
}

TEST_CASE("the level surface is dusted too, where it is topping or where there is none",
          "[planning]") {
  const DustByArea mica{milligram / square_centimetre, 50 * percent, 50 * percent};
  const auto exposed_mm2 = [&](Run run) {
    run.dust.push_back({"mica", mica});
    return planning::plan(run).dust.at(0).exposed.value() / square_millimetre;
  };
  // The paper cavity is 100 x 50 mm. Its headspace half filled, the cone's side stands on topping:
  // what the cone's foot of 20 mm radius leaves of that shows.
  const double side = pi * 20 * std::sqrt(20.0 * 20 + 40 * 40);
  CHECK_THAT(exposed_mm2(coned_run()), WithinRel(5000 - pi * 400 + side, 0.005));
  CHECK_THAT(exposed_mm2(paper_run()), WithinRel(5000.0, 1e-6));
}

namespace {

/// Mica by the surface on `run`, whose headspace is left as it is so that the base is not dusted.
Run dusted(Run run) {
  run.pipe->fills_headspace = Share{};
  run.dust.push_back(
      {"mica", DustByArea{2 * milligram / square_centimetre, 50 * percent, 40 * percent}});
  return run;
}
double exposed_mm2(const Run& run) {
  return planning::plan(run).dust.at(0).exposed.value() / square_millimetre;
}
Run piped(const geometry::Opening& opening, std::vector<geometry::Move> moves) {
  Run run = coned_run();
  run.pipe->envelope.reset();
  run.pipe->beads = Beads{Tip{.name = "a tip", .opening = opening}, 1, std::move(moves)};
  return dusted(run);
}

}  // namespace

TEST_CASE("the surface that is dusted is the one that geometry on paper has", "[planning]") {
  Run run = dusted(coned_run());
  // Half a ball of 20 mm radius: 2 pi r^2.
  run.pipe->envelope->form = EnvelopeForm::dome;
  run.pipe->envelope->height = 20 * millimetre;
  CHECK_THAT(exposed_mm2(run), WithinRel(2 * pi * 400, 0.005));
  // A square bead lying on the base, 60 mm long and 10 mm wide and high: its top, its long sides
  // and its ends. (The program knows no square but as an outline.)
  const geometry::OutlineOpening square{{{-5, -5}, {5, -5}, {5, 5}, {-5, 5}}};
  CHECK_THAT(exposed_mm2(piped(square, {geometry::StraightBead{60 * millimetre}})),
             WithinRel(3 * 600 + 2 * 100, 0.005));
  // A ring lying on its lowest line: a torus, 4 pi^2 R r (Pappus).
  const geometry::RoundOpening round{4 * millimetre};
  CHECK_THAT(exposed_mm2(piped(round, {geometry::Ring{18 * millimetre}})),
             WithinRel(4 * pi * pi * 18 * 4, 0.005));
}

TEST_CASE("a number of pieces or a price changes no surface, and a topping does", "[planning]") {
  const geometry::RoundOpening round{4 * millimetre};
  Run run = piped(round, {geometry::Ring{18 * millimetre}});
  const double first = exposed_mm2(run);
  run.sell *= 3;
  run.spoilage = 7 * percent;
  CHECK(exposed_mm2(run) == first);
  // A hair's breadth is another topping: what is known of the one is not told of the other.
  run.pipe->beads->moves = {geometry::Ring{18.001 * millimetre}};
  const double wider = exposed_mm2(run);
  CHECK(wider > first);
  run.pipe->beads->moves = {geometry::Ring{18 * millimetre}};
  CHECK(exposed_mm2(run) == first);
}

TEST_CASE("a larger topping shows more", "[planning]") {
  double less = 0;
  for (const double radius : {8.0, 12.0, 16.0, 20.0}) {
    const double more = exposed_mm2(
        piped(geometry::RoundOpening{4 * millimetre}, {geometry::Ring{radius * millimetre}}));
    CHECK(more > less);
    less = more;
  }
}

TEST_CASE("a topping that fills nothing of the headspace has its size all the same", "[planning]") {
  // It stood on a layer without thickness, which has no box: planning such a run ended the program.
  Run run = coned_run();
  const bool by_beads = GENERATE(false, true);
  if (by_beads) {
    Tip round{.name = "round 10 mm", .opening = geometry::RoundOpening{5 * millimetre}};
    run.pipe->envelope.reset();
    run.pipe->beads = Beads{round, 1, {geometry::Ring{15 * millimetre}}};
  }
  const double filled = GENERATE(0.0, 1e-300, 1e-15, 1e-12, 1e-9);
  run.pipe->fills_headspace = Share::of_one(filled);
  const Measured measured = planning::measured(run);
  REQUIRE(measured.size);
  const PieceModel model = piece_model(run, measured);
  CHECK_THAT((model.foot - model.pour_line) / millimetre, WithinAbs(0, 1e-6));
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids) CHECK_FALSE(solid.triangles.empty());
}

TEST_CASE("the model's solids hold what the plan pours and pipes", "[planning]") {
  Run run = coned_run();
  run.pipe->envelope.reset();
  Tip round{.name = "round 10 mm", .opening = geometry::RoundOpening{5 * millimetre}};
  run.pipe->beads = Beads{round, 1, {geometry::Ring{15 * millimetre}}};
  run.pour.layers = {{"Low", LayerParts{2}, {}}, {"High", LayerParts{1}, {}}};
  const Measured measured = planning::measured(run);
  const Plan plan = plan_of(run, measured);
  const PieceModel model = piece_model(run, measured);
  REQUIRE(model.parts.size() == 3);
  Volume base, topping;
  for (const auto& part : model.parts)
    for (const auto& solid : part.solids)
      (part.kind == PartKind::base ? base : topping) += geometry::enclosed_volume(solid);
  CHECK_THAT(base / millilitre, WithinRel(plan.pour.batter.volume_each / millilitre, 1e-9));
  // A faceted ring is short by its chords: within a per cent.
  CHECK_THAT(topping / millilitre, WithinRel(plan.pipe->batter.volume_each / millilitre, 0.01));
}

TEST_CASE("moves that leave the opening are refused with what would fit", "[planning]") {
  Run run = coned_run();
  Tip round{.name = "round 10 mm", .opening = geometry::RoundOpening{5 * millimetre}};
  // The opening's half width is 25 mm; the bead reaches 21 + 5.
  run.pipe->beads = Beads{round, 1, {geometry::Ring{21 * millimetre}}};
  CHECK_THROWS_WITH(planning::plan(run),
                    Contains("/pipe/beads/moves/0: reaches 26 mm from the middle") &&
                        Contains("take at least 1 mm (0.04 in) off its radius"));
  run.pipe->beads->moves = {geometry::Ring{20 * millimetre}};
  CHECK_NOTHROW(planning::plan(run));
  run.pipe->beads->moves = {geometry::StraightBead{120 * millimetre}};
  CHECK_THROWS_WITH(planning::plan(run), Contains("leaves the mould"));
}

TEST_CASE("a loaf is poured whole, and its bars share it", "[planning]") {
  Run run = paper_run();
  run.cut = Cut{.bar = Slices{25 * millimetre}};
  run.sell = 10;
  const Plan plan = planning::plan(run);
  // 100 mm give four bars of 25 mm; 10 / 0.96 is 11 bars, so three loaves of 90 ml.
  CHECK(plan.pieces.per_cast == 4);
  CHECK(plan.pieces.make == 11);
  CHECK(plan.pieces.casts == 3);
  CHECK_THAT(plan.pour.batter.in_pieces / gram, WithinAbs(270, 1e-6));
  CHECK_THAT(plan.piece.fresh / gram, WithinAbs(22.5, 1e-6));
}
