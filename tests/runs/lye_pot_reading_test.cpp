#include "runs/lye_pot_reading.h"

#include "schemas/kinds.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {

std::optional<planning::PotQuestion> read(const std::string& run) {
  return runs::read_lye_pot(Fields::parse(run, "test.run.json"));
}

/// In a run of version 1, which asked for "shared".
std::optional<planning::PotQuestion> read_earlier(const std::string& pot) {
  const Fields run =
      Fields::parse(R"({ "schema": "brimwright.run/1", "lye_pot": )" + pot + " }", "test.run.json");
  run.of(schemas::run());
  return runs::read_lye_pot(run);
}

}  // namespace

TEST_CASE("a pot is shared only where the run has one", "[runs]") {
  CHECK_FALSE(read("{}"));
  const auto pot = read(R"({ "lye_pot": { "pot_tare": "412 g" } })");
  REQUIRE(pot);
  CHECK(pot->pot_tare == 412 * gram);
  CHECK(pot->where.field == "/lye_pot");
  CHECK(read(R"({ "lye_pot": {} })"));
  CHECK_FALSE(read(R"({ "lye_pot": {} })")->pot_tare);
}

TEST_CASE("a run of version 1 says of its pot whether it is shared", "[runs]") {
  CHECK(read_earlier(R"({ "shared": true, "pot_tare": "412 g" })")->pot_tare == 412 * gram);
  CHECK_FALSE(read_earlier(R"({ "shared": false })"));
  CHECK_THROWS_WITH(read_earlier("{}"), Contains("/lye_pot/shared"));
  CHECK_THROWS_WITH(read_earlier(R"({ "shared": "half" })"), Contains("/lye_pot/shared"));
  CHECK_THROWS_WITH(read_earlier(R"({ "shared": false, "pot_tare": "400 g" })"),
                    Contains("not shared"));
}

TEST_CASE("what a pot cannot be is refused in one line", "[runs]") {
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "pot_tare": "0 g" } })"), Contains("/lye_pot/pot_tare"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "tare": "400 g" } })"), Contains("/lye_pot/tare"));
  CHECK_THROWS_WITH(read(R"({ "lye_pot": { "shared": true } })"), Contains("/lye_pot/shared"));
}
