#include "planning/blanks.h"
#include "reports/batter_json.h"
#include "reports/blanks_json.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/plan_numbers.h"
#include "reports/together_report.h"
#include "reports/weigh_out_json.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using planning::TogetherPart;

/// Of a batter that is poured into several kinds of piece nothing is "each".
Json batter_of(const planning::BatterTally& batter, const chemistry::Formula& formula) {
  Json json = batter_json(batter, formula);
  json.erase("volume_each_ml");
  json.erase("mass_each_g");
  return json;
}

Json part_json(const PouredTogether& of, const TogetherPart& part) {
  const PouredTogether::Line& line = of.lines[part.line];
  const planning::Batch& batch = of.planned->lines[part.line].batches[part.batch];
  const auto& pour = batch.pour;
  return {{"line", line.number},
          {"run", line.run->name},
          {"pieces", batch.pieces},
          {"casts", batch.casts},
          {"numbers", batch.numbers},
          {"mass_each_g", grams(pour.batter.mass_each)},
          {"in_pieces_g", grams(pour.batter.in_pieces)},
          {"takes_g", grams(part.takes)},
          {"share_percent", to_decimals(100 * part.of_batch, 4)}};
}

Json batch_json(const PouredTogether& of, std::size_t b) {
  const auto& together = *of.planned;
  const planning::Batch& batch = together.plan.batches[b];
  const auto& batter = batch.pour.batter;
  Json parts = Json::array();
  Mass taken;
  for (const TogetherPart& part : together.batches[b].parts) {
    parts.push_back(part_json(of, part));
    taken += part.takes;
  }
  const Mass left_behind = together.batches[b].left_behind;
  return with_weigh_out({{"count", batch.count()},
                         {"numbers", batch.numbers},
                         {"pieces", batch.pieces},
                         {"base", batter_of(batter, together.run.pour.formula)},
                         {"left_behind_g", grams(left_behind)},
                         {"over_g", grams(batter.weighing.batter - taken - left_behind)},
                         {"lines", parts}},
                        weigh_out(of, b));
}

}  // namespace

Json together_json(const std::vector<PouredTogether>& all) {
  Json json = Json::array();
  for (const PouredTogether& one : all) {
    const auto& plan = one.planned->plan;
    Json batches = Json::array(), cautions = Json::array(), lines = Json::array();
    for (std::size_t b = 0; b < plan.batches.size(); ++b) batches.push_back(batch_json(one, b));
    for (const auto& caution : plan.cautions)
      if (!caution.is_general && caution.severity != Severity::note)
        cautions.push_back({{"severity", name_of(caution.severity)}, {"text", caution.text}});
    for (const auto& line : one.lines) lines.push_back(line.number);
    json.push_back({{"word", one.word},
                    {"formula", plan.name},
                    {"lines", lines},
                    {"fillings", plan.pieces.fillings},
                    {"make_g", grams(plan.pour.batter.weighing.batter)},
                    {"batches", batches},
                    {"cautions", cautions}});
  }
  return json;
}

std::string base_json(const PouredTogether& of) {
  const auto& plan = of.planned->plan;
  Json batches = Json::array();
  for (std::size_t b = 0; b < plan.batches.size(); ++b) {
    Json one = batch_json(of, b);
    one["pour"] = std::move(one["base"]);
    one.erase("base");
    auto blanks = planning::blanks_of(of.planned->run, plan, plan.batches[b]);
    std::erase_if(blanks, [](const auto& blank) { return !planning::is_of_base(blank); });
    one["blanks"] = blanks_json(blanks);
    batches.push_back(std::move(one));
  }
  return json_document({{"base", plan.name},
                        {"word", of.word},
                        {"pieces", {{"batches", plan.pieces.batches}}},
                        {"batches", batches}});
}

}  // namespace brimwright::reports
