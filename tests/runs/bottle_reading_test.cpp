#include "runs/bottle_reading.h"

#include <catch2/catch.hpp>

#include <string>

using namespace brimwright;
using namespace brimwright::runs;

namespace {

Fields run_with(const std::string& section) {
  return Fields::parse("{ " + section + " }", "order.run.json");
}

}  // namespace

TEST_CASE("bottles are read with the way they are shared", "[runs]") {
  const auto bottles = read_bottles(run_with(
      R"("bottles": [ { "name": "rose", "holds": "100 g", "shared": "by rate" },
                      { "name": "mint", "holds": "2 oz", "shared": "half and half" } ])"));
  REQUIRE(bottles.size() == 2);
  CHECK(bottles[0].way == planning::SharingWay::by_rate);
  CHECK(bottles[1].way == planning::SharingWay::half_in_each);
  CHECK_THROWS_AS(read_bottles(run_with(R"("bottles": [ { "name": "rose", "holds": "100 g" } ])")),
                  UserError);
}
