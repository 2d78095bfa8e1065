#include "runs/bottle_reading.h"

#include "schemas/kinds.h"

#include <catch2/catch.hpp>

#include <string>

using namespace brimwright;
using namespace brimwright::runs;

namespace {

Fields run_with(const std::string& section) {
  return Fields::parse("{ " + section + " }", "order.run.json");
}

/// Of version 1, which asked how a bottle is shared.
Fields earlier_run_with(const std::string& section) {
  Fields run = run_with(R"("schema": "brimwright.run/1", )" + section);
  run.of(schemas::run());
  return run;
}

}  // namespace

TEST_CASE("bottles are shared by rate", "[runs]") {
  const auto bottles =
      read_bottles(run_with(R"("bottles": [ { "name": "rose", "holds": "100 g" } ])"));
  REQUIRE(bottles.size() == 1);
  CHECK(bottles[0].way == planning::SharingWay::by_rate);
  CHECK_THROWS_AS(read_bottles(run_with(
                      R"("bottles": [ { "name": "rose", "holds": "1 g", "shared": "by rate" } ])")),
                  UserError);
}

TEST_CASE("a run of version 1 says how its bottles are shared", "[runs]") {
  const auto bottles = read_bottles(earlier_run_with(
      R"("bottles": [ { "name": "rose", "holds": "100 g", "shared": "by rate" },
                      { "name": "mint", "holds": "2 oz", "shared": "half and half" } ])"));
  REQUIRE(bottles.size() == 2);
  CHECK(bottles[0].way == planning::SharingWay::by_rate);
  CHECK(bottles[1].way == planning::SharingWay::half_in_each);
  CHECK_THROWS_AS(
      read_bottles(earlier_run_with(R"("bottles": [ { "name": "rose", "holds": "100 g" } ])")),
      UserError);
}
