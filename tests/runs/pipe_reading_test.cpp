#include "runs/pipe_reading.h"

#include "shipped_run.h"

#include <catch2/catch.hpp>

#include <chrono>

using namespace brimwright;
using namespace brimwright::runs::test;
using Catch::Matchers::Contains;

TEST_CASE("a topping is read with its sizes, its whip and its limits", "[runs]") {
  const planning::Pipe pipe = read(shipped_run()).pipe.value();
  CHECK(pipe.formula.name == "Cloud topping");
  CHECK(pipe.trials.value().weighed.size() == 5);
  CHECK(pipe.trials->weighed[1] == 25 * gram);
  CHECK(pipe.trials->cup.holds == 120 * millilitre);
  CHECK(pipe.beads.value().tip.name == "star 8 x 16 mm");
  CHECK(pipe.beads->bead_to_opening == 1.15);
  REQUIRE(pipe.beads->moves.size() == 2);
  CHECK(std::get<geometry::Ring>(pipe.beads->moves[0]).radius == 18 * millimetre);
  CHECK(std::get<geometry::ConicalSpiral>(pipe.beads->moves[1]).turns == 2);
  CHECK(pipe.fills_headspace == 80 * percent);
  CHECK(pipe.whip.net == 78 * gram);
  CHECK(pipe.whip_now.value().net == 76.2 * gram);
  CHECK(pipe.bag_holds == 600 * millilitre);
  CHECK(pipe.bowl.value().whisk_needs == 400 * millilitre);
  CHECK(pipe.pace.value().open_time == std::chrono::minutes(30));
  CHECK(pipe.pace->time_per_bag_change == std::chrono::seconds(60));
  CHECK(pipe.lye_spoon.value().time_between == std::chrono::seconds(20));
  CHECK(pipe.losses.each_bag_change == 8 * gram);
}

TEST_CASE("what is wrong with a topping is refused where it stands", "[runs]") {
  const auto slip = GENERATE(values<Slip>({
      {"/pipe/formula", R"("no.formula.json")", "/pipe/formula", "no.formula.json"},
      {"/pipe/fills_headspace", "", "/pipe/fills_headspace", "is missing"},
      {"/pipe/fills_headspace", R"("120 %")", "/pipe/fills_headspace", "120 %"},
      {"/pipe/whip", "", "/pipe/whip", "is missing"},
      {"/pipe/whip/net", R"("10 g")", "/pipe/whip", "makes a density of 0.083 g/ml"},
      {"/pipe/whip/tare", R"("10 g")", "/pipe/whip/tare", "unknown key"},
      {"/pipe/trials/weighed", "[]", "/pipe/trials/weighed", "holds no trial"},
      {"/pipe/trials/weighed/2", R"("0 g")", "/pipe/trials/weighed/2", "is zero"},
      {"/pipe/beads/bead_to_opening", "4", "/pipe/beads/bead_to_opening",
       "is not between 0.5 and 3"},
      {"/pipe/beads/moves", "[]", "/pipe/beads/moves", "holds no move"},
      {"/pipe/beads/tip", R"("star 8 x 61 mm")", "/pipe/beads/tip", "did you mean"},
      {"/pipe/beads/moves/0/move", R"("twirl")", "/pipe/beads/moves/0/move", "twirl"},
      {"/pipe/beads/moves/1/rise", "", "/pipe/beads/moves/1/rise", "is missing"},
      {"/pipe/bowl/whisk_needs", R"("5 l")", "/pipe/bowl/whisk_needs", "as much as the bowl"},
      {"/pipe/pace/time_per_piece", "", "/pipe/pace/time_per_piece", "is missing"},
      {"/pipe/lye_spoon/holds", R"("15 g")", "/pipe/lye_spoon/holds", "15 g"},
      {"/pipe/lye_spoon/holds", "15", "/pipe/lye_spoon/holds", "such as \"15 ml\""},
      {"/pipe/bowl/holds", "4", "/pipe/bowl/holds", "such as \"4 l\""},
      {"/pipe/bag_holds", R"("900")", "/pipe/bag_holds", "such as \"900 ml\""},
      {"/pipe/fills_headspace", "80", "/pipe/fills_headspace", "such as \"80 %\""},
      {"/pipe/nozzle", R"("star")", "/pipe/nozzle", "unknown key"},
      {"/losses/pipe/bag", "", "/losses/pipe/bag", "is missing"},
  }));
  CAPTURE(slip.at, slip.value);
  const auto complaint = complaint_of(slip);
  CHECK(complaint.field == slip.field);
  CHECK_THAT(complaint.problem + "; " + complaint.remedy, Contains(slip.says));
}

TEST_CASE("a topping whose size nothing tells is refused", "[runs]") {
  Json run = shipped_run();
  run["pipe"].erase("trials");
  run["pipe"].erase("beads");
  CHECK_THROWS_WITH(read(run), Contains("/pipe: does not say how big a topping is"));
}
