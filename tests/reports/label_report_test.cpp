#include "reports/label_report.h"

#include "planning/plan.h"
#include "reports/plan_report.h"
#include "reports/text_table.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <cmath>
#include <sstream>

using namespace brimwright;
using namespace brimwright::reports;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

planning::Run labelled_run() {
  planning::Run run = planning::paper_run();
  run.pour.formula.water_lost_in_cure.reset();
  run.pour.formula.cure = std::chrono::hours(24 * 28);
  run.pour.formula.drying = std::vector<chemistry::CureWeighing>{
      {0, 100 * gram}, {7, 95 * gram}, {14, 92.5 * gram}, {21, 91.25 * gram}, {28, 90.6 * gram}};
  run.label = planning::LabelOrder{planning::Market::EU, {{}, 2 * gram, {}, {}}, false, {}};
  run.bottles = {{"rose", 50 * gram}};
  chemistry::Additive rose;
  rose.name = "rose";
  rose.kind = chemistry::AdditiveKind::fragrance;
  rose.rate = Rate{1 * percent, RateBasis::fats};
  rose.label = {{}, {{"Geraniol", 20 * percent}}, "declaration 4"};
  run.pour.formula.additives = {rose};
  return run;
}

}  // namespace

TEST_CASE("the label's draft is told in words", "[reports]") {
  const auto run = labelled_run();
  const auto text = plan_text(run, planning::plan(run));
  CHECK_THAT(text, Contains("LABEL, DRAFT FOR THE EU"));
  CHECK_THAT(text, Contains("Net quantity: "));
  CHECK_THAT(text, Contains("Ingredients as finished soap: Sodium Olivate, "));
  CHECK_THAT(text, Contains("Ingredients as weighed in: Olea Europaea Fruit Oil, Aqua, "));
  CHECK_THAT(text, Contains("Geraniol"));
  CHECK_THAT(text, Contains("Allergens from: declaration 4."));
  CHECK_THAT(text, Contains("fitted to 5 weighings"));
  CHECK_THAT(text, Contains("A bottle of rose, 50.0 g, divided so that every"));
}

TEST_CASE("no line of a label runs over the page", "[reports]") {
  const auto run = labelled_run();
  std::istringstream lines(plan_text(run, planning::plan(run)));
  for (std::string line; std::getline(lines, line);) {
    CAPTURE(line);
    CHECK(shown_width(line) <= page_width);
  }
}

TEST_CASE("a run without a label says how to get one", "[reports]") {
  const auto run = planning::paper_run();
  const auto plan = planning::plan(run);
  CHECK_THAT(plan_text(run, plan), Contains("No label in the run"));
  const auto json = nlohmann::json::parse(plan_json(run, plan));
  CHECK(json["label"].is_null());
  CHECK(json["piece"]["label_g"].is_null());
}

TEST_CASE("text and JSON of a label tell the same", "[reports]") {
  const auto run = labelled_run();
  const auto plan = planning::plan(run);
  const auto json = nlohmann::json::parse(plan_json(run, plan));
  const auto& label = json["label"];
  const std::string statement = label["net_quantity"]["statement"];
  CHECK_THAT(plan_text(run, plan), Contains("Net quantity: " + statement));
  CHECK(statement == std::to_string(json["piece"]["label_g"].get<int>()) + " g");
  CHECK(json["piece"]["label_g"] <= label["net_quantity"]["lightest_g"]);
  CHECK(label["allergens"][0]["name"] == "Geraniol");
  double sum = 0;
  for (const auto& ingredient : label["as_saponified"]["ingredients"])
    if (!ingredient.contains("allergen")) sum += ingredient["percent"].get<double>();
  CHECK_THAT(sum, WithinAbs(100, 0.001));
  CHECK(json["bottles"][0]["parts"][0]["g"] == 50.0);
}

TEST_CASE("the course of the cure is printed as fitted", "[reports]") {
  const auto run = labelled_run();
  const auto cure = nlohmann::json::parse(plan_json(run, planning::plan(run)))["pour"]["cure"];
  // The weighings halve their rest to 90 g each week, the last one 0.03 g off: tau near 7 / ln 2.
  CHECK_THAT(cure["time_constant_days"].get<double>(), WithinAbs(7 / std::log(2.0), 0.1));
  CHECK(cure["fit"]["weighings"] == 5);
  CHECK(cure["fit"]["spread_g"].get<double>() < 0.03);
}

TEST_CASE("each caution tells its topic", "[reports]") {
  const auto run = planning::paper_run();
  const auto json = nlohmann::json::parse(plan_json(run, planning::plan(run)));
  bool is_told = false;
  for (const auto& caution : json["cautions"])
    is_told = is_told || (caution["topic"] == "aluminium" && caution["severity"] == "caution");
  CHECK(is_told);
}
