#include "runs/lye_pot_reading.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {

std::optional<planning::PotQuestion> read(const std::string& run) {
  return runs::read_lye_pot(Fields::parse(run, "test.run.json"));
}

}  // namespace

TEST_CASE("a pot is shared only where the run says so", "[runs]") {
  CHECK_FALSE(read("{}"));
  CHECK_FALSE(read(R"({ "lye_pot": { "shared": false } })"));
  const auto pot = read(R"({ "lye_pot": { "shared": true, "pot_tare": "412 g" } })");
  REQUIRE(pot);
  CHECK(pot->pot_tare == 412 * gram);
  CHECK(pot->where.field == "/lye_pot");
  CHECK_FALSE(read(R"({ "lye_pot": { "shared": true } })")->pot_tare);
}

TEST_CASE("what a pot cannot be is refused in one line", "[runs]") {
  CHECK_THROWS_WITH(read(R"({ "lye_pot": {} })"), Contains("/lye_pot/shared"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "shared": "half" } })"), Contains("/lye_pot/shared"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "shared": true, "pot_tare": "0 g" } })"),
                    Contains("/lye_pot/pot_tare"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "shared": false, "pot_tare": "400 g" } })"),
                    Contains("not shared"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "shared": true, "tare": "400 g" } })"),
                    Contains("/lye_pot/tare"));
}
