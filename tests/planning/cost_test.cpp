#include "planning/cost.h"

#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::planning;

namespace {

const Currency eur{"EUR", 2};

Run priced_run() {
  Run run = paper_run();
  run.money =
      Purse{eur, {{"olive", {{1000, eur}, 1 * kilogram}}, {"NaOH", {{500, eur}, 1 * kilogram}}}};
  return run;
}

}  // namespace

TEST_CASE("the material of a piece is paid by the pieces that sell", "[planning]") {
  const Plan plan = planning::plan(priced_run());
  REQUIRE(plan.cost);
  // 3245 g of oil at 10.00 a kilogram is 32.45; 417.5 g NaOH at 5.00 is 2.0875, rounded 2.09. Their
  // sum 34.54 over 46 saleable pieces is 0.7509, rounded 0.75.
  CHECK(amount_text(plan.cost->total) == "34.54");
  CHECK(amount_text(plan.cost->per_piece) == "0.75");
}

TEST_CASE("what has no price is named unpriced, and of it water alone costs nothing",
          "[planning]") {
  Run run = priced_run();
  run.money->prices.erase("NaOH");
  const Plan plan = planning::plan(run);
  CHECK(plan.cost->unpriced == std::vector<std::string>{"NaOH"});
  for (const auto& line : plan.cost->lines) {
    CHECK(line.cost.has_value() == (line.name != "NaOH"));
    CHECK(line.is_from_tap == (line.name == "water"));
    if (line.is_from_tap) CHECK(line.cost->coins == 0);
  }
}

TEST_CASE("a run without any price of what is in it cost 0.00", "[planning]") {
  Run run = priced_run();
  CHECK(is_any_priced(*planning::plan(run).cost));
  run.money->prices = {{"olve", {{900, eur}, 1 * kilogram}}};
  CHECK_FALSE(is_any_priced(*planning::plan(run).cost));
}

TEST_CASE("a price for something that is not in the run is pointed out", "[planning]") {
  Run run = priced_run();
  run.money->prices["olve"] = {{900, eur}, 1 * kilogram};
  bool said = false;
  for (const auto& caution : planning::plan(run).cautions)
    said = said || caution.text.find("The price of \"olve\" is not used") != std::string::npos;
  CHECK(said);
}

TEST_CASE("an oil in both batters is one line of cost", "[planning]") {
  Run run = priced_run();
  run.pipe = paper_pipe();
  const Plan plan = planning::plan(run);
  int oils = 0;
  for (const auto& line : plan.cost->lines) oils += line.name == "olive";
  CHECK(oils == 1);
}
