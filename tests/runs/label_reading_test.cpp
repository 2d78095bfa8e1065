#include "runs/label_reading.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using namespace brimwright::runs;
using Catch::Matchers::Contains;

namespace {

Fields run_with(const std::string& section) {
  return Fields::parse("{ " + section + " }", "order.run.json");
}

struct Slip {
  std::string label, field, says;
};

}  // namespace

TEST_CASE("a label is read with its market and spread", "[runs]") {
  const auto order = read_label_order(run_with(
      R"("label": { "market": "US", "weight_spread": "2.5 %", "pour_line_off_by": "1 mm" })"));
  REQUIRE(order);
  CHECK(order->market == planning::Market::US);
  CHECK(order->weight_spread.share == 2.5 * percent);
  CHECK(order->weight_spread.pour_line_off_by == 1 * millimetre);
  CHECK_FALSE(order->e_mark);
  const auto weighed = read_label_order(run_with(
      R"("label": { "market": "EU", "weighed_pieces": ["96 g", "97 g", "95.5 g"], "e_mark": true,
                    "printed_weight": "95 g" })"));
  CHECK(weighed->weight_spread.weighed_pieces.size() == 3);
  CHECK(weighed->e_mark);
  CHECK(weighed->printed_weight == 95 * gram);
  const auto by_mass =
      read_label_order(run_with(R"("label": { "market": "EU", "weight_spread": "2 g" })"));
  CHECK(by_mass->weight_spread.either_way == 2 * gram);
  CHECK_FALSE(read_label_order(run_with("")));
}

TEST_CASE("a label that leaves something open is refused where it stands", "[runs]") {
  const auto slip = GENERATE(values<Slip>({
      {R"({ "weight_spread": "2 g" })", "/label/market", "missing"},
      {R"({ "market": "UK", "weight_spread": "2 g" })", "/label/market", "UK"},
      {R"({ "market": "EU" })", "/label", "does not give how much pieces differ"},
      {R"({ "market": "EU", "weight_spread": "2 g", "weighed_pieces": ["1 g", "1 g", "1 g"] })",
       "/label", "gives twice"},
      {R"({ "market": "EU", "weighed_pieces": ["96 g", "97 g"] })", "/label/weighed_pieces",
       "2 of the 3"},
      {R"({ "market": "EU", "weighed_pieces": ["96 g", "0 g", "97 g"] })",
       "/label/weighed_pieces/1", "is zero"},
      {R"({ "market": "EU", "weight_spread": "0 %" })", "/label/weight_spread", "is 0 %"},
      {R"({ "market": "EU", "weight_spread": "0 g" })", "/label/weight_spread", ""},
      {R"({ "market": "EU", "weight_spread": 2 })", "/label/weight_spread", ""},
      {R"({ "market": "US", "weight_spread": "2 g", "e_mark": true })", "/label/e_mark",
       "not a mark"},
      {R"({ "market": "EU", "weight_spred": "2 g", "pour_line_off_by": "1 mm" })",
       "/label/weight_spred", "did you mean \"weight_spread\"?"},
  }));
  CAPTURE(slip.label);
  try {
    read_label_order(run_with("\"label\": " + slip.label));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == slip.field);
    CHECK_THAT(std::string(error.what()), Contains(slip.says));
    CHECK_FALSE(error.parts().remedy.empty());
  }
}

TEST_CASE("a market that is not covered was taken for a slip for one that is", "[runs]") {
  // "UK" is one letter off "US", and a country of its own with a cosmetics law of its own.
  const std::string market = GENERATE("UK", "GB", "CH", "CA", "AU", "USA", "Uk", "EEA", "eu");
  CAPTURE(market);
  try {
    read_label_order(
        run_with(R"("label": { "weight_spread": "2 g", "market": ")" + market + R"(" })"));
    FAIL_CHECK("was not refused");
  } catch (const UserError& error) {
    const std::string says = error.what();
    CHECK(error.parts().field == "/label/market");
    CHECK_THAT(says, Contains("\"" + market + "\" is not covered"));
    CHECK_THAT(says, Contains("covered are \"EU\"") && Contains("\"US\""));
    CHECK_THAT(says, !Contains("did you mean"));
  }
}
