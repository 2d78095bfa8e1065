#include "runs/run_file.h"

#include "shipped_run.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::runs::test;
using Catch::Matchers::Contains;

TEST_CASE("a run is read with all its sections", "[runs]") {
  const planning::Run run = read(shipped_run());
  CHECK(run.file == file);
  CHECK(run.name == "Spring cups, twisted");
  CHECK(run.sell == 46);
  CHECK(run.spoilage == 4 * percent);
  CHECK(run.pour.mould.owned == 8);
  CHECK(run.pour.formula.name == "Meadow base");
  REQUIRE(run.pour.layers.size() == 2);
  CHECK(std::get<planning::LayerParts>(run.pour.layers[0].amount).parts == 2);
  CHECK(run.pour.layers[0].colours.at(0).bulk_density == 0.6 * gram_per_millilitre);
  CHECK(run.pour.losses.overpour == 1.5 * percent);
  CHECK(run.pour.losses.test_piece == 60 * gram);
  CHECK(run.pipe.has_value());
  CHECK(run.decorations.size() == 1);
  CHECK(run.dust.size() == 1);
  CHECK_FALSE(run.cut);
  CHECK(run.scales.large.step == gram);
  CHECK(run.scales.fine.most == 500 * gram);
  CHECK(run.money.value().prices.at("olive").pack == 5 * kilogram);
  CHECK(run.money->prices.size() == 21);
  CHECK(run.label.has_value());
  CHECK(run.pots.holds == 5 * litre);
  CHECK(run.batch.pieces == 24);
}

TEST_CASE("a number asked for takes the place of the file's own, which need not be one", "[runs]") {
  CHECK(read(shipped_run(), 12).sell == 12);
  CHECK(read(with("/sell", "\"many\""), 12).sell == 12);
  CHECK(read(with("/sell", ""), 12).sell == 12);
}

TEST_CASE("what is wrong with a run is refused where it stands", "[runs]") {
  const auto slip = GENERATE(values<Slip>({
      {"/schema", R"("brimwright.run/9")", "/schema", "brimwright.run/2"},
      {"/name", "", "/name", "is missing"},
      {"/sell", "", "/sell", "is missing"},
      {"/sell", "0", "/sell", "is 0 pieces"},
      {"/sell", "4.5", "/sell", "is 4.5 pieces"},
      {"/sell", "2000000", "/sell", "from 1 to 1000000"},
      {"/spoilage", R"("95 %")", "/spoilage", "95 %"},
      {"/colour", R"("green")", "/colour", "unknown key"},
      {"/losses/pour", "", "/losses/pour", "is missing"},
      {"/losses/pour/pot", R"("25")", "/losses/pour/pot", "unit"},
      {"/losses/pour/pan", R"("25 g")", "/losses/pour/pan", "unknown key"},
      {"/losses/pour/pot", R"("5000 g")", "/losses/pour/pot", "5000 g"},
      {"/scales/fine/step", R"("2 g")", "/scales/fine", "a coarser step than the large scale"},
      {"/scales/large/most", R"("5 g")", "/scales/large", "less than ten of its own steps"},
      {"/scales/large/most", R"("400 g")", "/scales/large", "less than the fine scale"},
      {"/scales", "", "/scales", "is missing"},
      {"/money/currency", R"("EURO")", "/money/currency", "EURO"},
      {"/money/prices/olive/paid", R"("cheap")", "/money/prices/olive/paid", "cheap"},
      {"/money/prices/olive/pack", R"("5 kg")", "/money/prices/olive/pack", "unknown key"},
      {"/pour/mould", R"("moulds/no_cup.json")", "/pour/mould", "no_cup"},
      {"/pour/formula", "", "/pour/formula", "is missing"},
      {"/pour/line", "{}", "/pour/line", "gives no level"},
      {"/pour/line/below_brim", R"("60 mm")", "/pour/line", "leaves nothing to fill"},
      {"/pour/layers/0/parts", "0", "/pour/layers/0/parts", "is not above zero"},
      {"/pour/layers/0/rest", "true", "/pour/layers/0", "more than once"},
      {"/pour/layers/1/parts", "", "/pour/layers/1", "gives no amount"},
      {"/pour/layers/0/colours/0/bulk_density", "", "/pour/layers/0/colours/0/rate",
       "by the spoon"},
      {"/pour/layers/0/colours/0/name", R"("lye")", "/pour/layers/0/colours/0/name", "lye"},
  }));
  CAPTURE(slip.at, slip.value);
  const auto complaint = complaint_of(slip);
  CHECK(complaint.file == file);
  CHECK(complaint.field == slip.field);
  CHECK_THAT(complaint.problem + "; " + complaint.remedy, Contains(slip.says));
}
