#include "reports/plan_words.h"
#include "reports/ready_report.h"
#include "trade/amount_text.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

Json paid_json(const records::PaidCost& cost) {
  Json sums = Json::array();
  for (const auto& sum : cost.sums) {
    const Money shown = trade::to_coin(sum, trade::ToCoin::nearest, {});
    sums.push_back({{"amount", amount_text(shown)}, {"currency", shown.currency.code}});
  }
  return {{"materials", sums}, {"unpriced", cost.unpriced}};
}

Json batch_json(const ReadyBatch& one) {
  return {{"batch", one.code},
          {"pieces", one.pieces},
          {"ready_on", one.ready_on ? Json(*one.ready_on) : Json(nullptr)},
          {"cost", one.cost ? paid_json(*one.cost) : Json(nullptr)}};
}

Json line_json(const ReadyLine& line) {
  Json batches = Json::array(), otherwise = Json::array();
  for (const ReadyBatch& one : line.batches) batches.push_back(batch_json(one));
  for (const auto& [code, pieces, files] : line.otherwise)
    otherwise.push_back({{"batch", code}, {"pieces", pieces}, {"files", files}});
  return {{"run", line.run},          {"name", line.name},
          {"wanted", line.wanted},    {"delivered", line.delivered},
          {"taken", line.taken()},    {"to_make", line.to_make()},
          {"batches", batches},       {"made_otherwise", otherwise},
          {"text", ready_words(line)}};
}

}  // namespace

Json ready_json(const ReadyOrder& order) {
  Json lines = Json::array(), notes = Json::array();
  for (const ReadyLine& line : order.lines) lines.push_back(line_json(line));
  for (const Remark& note : order.notes)
    notes.push_back({{"severity", name_of(note.severity)}, {"text", note.text}});
  return {{"order", order.file},
          {"lines", lines},
          {"cost", order.taken() > 0 ? paid_json(order.cost()) : Json(nullptr)},
          {"costs_unknown", order.costs_unknown()},
          {"notes", notes}};
}

}  // namespace brimwright::reports
