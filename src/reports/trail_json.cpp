#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/stock_json.h"
#include "reports/trail_report.h"
#include "units/money.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json others_json(const std::vector<Trail::LotPart::Other>& others) {
  Json json = Json::array();
  for (const auto& one : others)
    json.push_back({{"lot", one.code},
                    {"material", one.material},
                    {"amount", amount_json(one.whole, one.is_pieces)}});
  return json;
}

Json lot_part_json(const Trail::LotPart& part, const std::string& day) {
  Json json = lot_json(part.of, day);
  json["shown_as"] = part.shown;
  json["from_lots"] = others_json(part.made_of);
  json["into_lots"] = others_json(part.made_into);
  json["counts"] = Json::array();
  for (const auto& one : part.counts)
    json["counts"].push_back({{"on", one.day},
                              {"by", amount_json(one.whole, part.of.lot.holds.is_pieces())},
                              {"why", text_or_null(one.why)}});
  return json;
}

Json row_json(const Trail::Row& row) {
  const bool is_pieces = row.weighed.amount.is_pieces();
  Json from = Json::array();
  for (const auto& one : row.from)
    from.push_back({{"lot", one.code},
                    {"make", text_or_null(one.make)},
                    {"amount", amount_json(one.whole, is_pieces)}});
  return {{"row", row.weighed.row},
          {"material", row.weighed.material},
          {"shown_as", row.weighed.shown},
          {"weighed", amount_json(row.weighed.amount.whole(), is_pieces)},
          {"from", from},
          {"unknown", amount_json(row.unknown, is_pieces)}};
}

/// To the coin.
Json cost_json(const records::PaidCost& cost) {
  Json sums = Json::array();
  for (const auto& sum : cost.sums) {
    const Money shown = trade::to_coin(sum, trade::ToCoin::nearest, {});
    sums.push_back({{"amount", amount_text(shown)}, {"currency", shown.currency.code}});
  }
  return {{"materials", sums}, {"unpriced", cost.unpriced}};
}

Json went_json(const records::PieceChange& went) {
  return {{"what", name_of(went.what)},
          {"pieces", went.pieces},
          {"on", went.day},
          {"order", text_or_null(went.of_order)},
          {"for", text_or_null(went.of_order_name)},
          {"why", text_or_null(went.why)}};
}

double percent_of(const trade::Fraction& share) {
  return to_decimals(100 * share.convert_to<double>(), 4);
}

Json batch_json(const Trail::BatchPart& part) {
  Json rows = Json::array(), went = Json::array();
  for (const auto& row : part.rows) rows.push_back(row_json(row));
  for (const auto& one : part.went) went.push_back(went_json(one));
  return {{"batch", part.batch.code},
          {"id", part.batch.id},
          {"run", part.batch.run_name},
          {"file", part.batch.run_file},
          {"number", part.batch.number},
          {"begun_on", part.batch.begun_on},
          {"poured_from", part.base.empty() ? Json(nullptr)
                                            : Json{{"batch", part.base},
                                                   {"share_percent", percent_of(part.of_base)}}},
          {"lines", part.lines},
          {"rows", rows},
          {"all_rows", part.has_all_rows},
          {"cost", part.has_all_rows ? cost_json(part.cost) : Json(nullptr)},
          {"pieces", count_json(part.count)},
          {"went", went}};
}

}  // namespace

std::string trail_json(const Trail& trail) {
  Json lots = Json::array(), batches = Json::array(), gaps = Json::array();
  for (const auto& one : trail.lots) lots.push_back(lot_part_json(one, trail.day));
  for (const auto& one : trail.batches) batches.push_back(batch_json(one));
  for (const auto& one : trail.gaps)
    gaps.push_back({{"batch", one.batch}, {"run", one.run}, {"shown_as", one.shown}});
  return json_document({{"schema", "brimwright.trail/1"},
                        {"asked", trail.asked},
                        {"is", trail.is},
                        {"day", trail.day},
                        {"lots", lots},
                        {"batches", batches},
                        {"gaps", gaps}});
}

}  // namespace brimwright::reports
