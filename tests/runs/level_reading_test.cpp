#include "runs/level_reading.h"

#include <catch2/catch.hpp>

#include <string>
#include <variant>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {

Fields fields(const std::string& json) { return Fields::parse(json, "loaf.run.json"); }

}  // namespace

TEST_CASE("a level is said from the brim down or from the floor up, never both", "[runs]") {
  const auto read = [](const std::string& level) {
    return runs::read_fill_level(fields(R"({ "line": )" + level + " }"), "line");
  };
  const auto below = read(R"({ "below_brim": "1/4 in" })");
  CHECK(std::get<planning::BelowBrim>(below).headspace == 6.35 * millimetre);
  CHECK(std::get<planning::BelowBrim>(read(R"({ "below_brim": "0 mm" })")).headspace == Length{});
  CHECK(std::get<planning::FromFloor>(read(R"({ "depth": "30 mm" })")).depth == 30 * millimetre);
  CHECK_THROWS_WITH(read("{}"), Contains("loaf.run.json: /line: gives no level"));
  CHECK_THROWS_WITH(read(R"({ "below_brim": "5 mm", "depth": "30 mm" })"),
                    Contains("/line: gives the level twice"));
  CHECK_THROWS_WITH(read(R"({ "depth": "0 mm" })"), Contains("/line/depth"));
  CHECK_THROWS_WITH(read(R"({ "depth": "30 mm", "from": "rim" })"), Contains("/line/from"));
}

TEST_CASE("a tilted mould's low side is a side or a direction", "[runs]") {
  const auto tilt = runs::read_tilt(fields(R"({ "angle": "12 deg", "low_side": "-x" })"));
  CHECK(tilt.angle.degrees() == Approx(12));
  CHECK(tilt.low_side.degrees() == Approx(180));
  const Place place{"command line", "--low-side"};
  CHECK(runs::read_low_side("+y", place).degrees() == Approx(90));
  CHECK(runs::read_low_side("45°", place).degrees() == Approx(45));
  CHECK_THROWS_WITH(runs::read_low_side("left", place), Contains("command line: --low-side"));
  CHECK_THROWS_WITH(runs::read_tilt(fields(R"({ "angle": "12 deg" })")), Contains("/low_side"));
  CHECK_THROWS_WITH(runs::read_tilt(fields(R"({ "angle": "90 deg", "low_side": "+x" })")),
                    Contains("/angle"));
  CHECK_THROWS_WITH(
      runs::read_tilt(fields(R"({ "angle": "5 deg", "low_side": "+x", "way": "a" })")),
      Contains("/way"));
}
