#include "reports/stock_json.h"

#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/stock_report.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using records::Lot;
using records::StandingLot;

Json text_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

std::string name_of(Lot::Origin origin) {
  if (origin == Lot::Origin::made) return "made";
  return origin == Lot::Origin::before_records ? "before records" : "bought";
}

void put_material(LongList& materials, const Stock::Material& material, const std::string& day) {
  LongList lots("lots");
  for (const StandingLot& one : material.lots) lots.put(lot_json(one, day));
  materials.put({{"material", material.material}, {"shown_as", material.shown}, {"lots", nullptr}},
                {lots});
}

Json pieces_json(const Stock::Pieces& pieces) {
  Json json = {{"batch", pieces.batch.code},
               {"id", pieces.batch.id},
               {"run", pieces.batch.run_name},
               {"file", pieces.batch.run_file},
               {"begun_on", pieces.batch.begun_on}};
  json.update(count_json(pieces.count));
  json["cures_until"] = pieces.cures_until ? Json(*pieces.cures_until) : Json(nullptr);
  json["for_sale"] = pieces.is_for_sale;
  json["why_not"] = text_or_null(pieces.why_not);
  return json;
}

Json names_json(const Stock::Names& names) {
  return {{"currency", text_or_null(names.currency)},
          {"materials", names.materials},
          {"made_ahead", names.made_ahead},
          {"sellers", names.sellers}};
}

}  // namespace

Json amount_json(std::int64_t whole, bool is_pieces) {
  if (is_pieces) return {{"pieces", whole}};
  return {{"g", to_decimals(static_cast<double>(whole) / 1e6, 6)}};
}

Json lot_json(const StandingLot& of, const std::string& day) {
  const Lot& lot = of.lot;
  const bool is_pieces = lot.holds.is_pieces();
  return {{"lot", lot.code},
          {"material", lot.material},
          {"make", text_or_null(lot.make)},
          {"origin", name_of(lot.origin)},
          {"on", lot.bought_on},
          {"seller", text_or_null(lot.seller)},
          {"best_before", lot.best_before ? Json(*lot.best_before) : Json(nullptr)},
          {"is_past", lot.is_past(day)},
          {"packs", lot.packs},
          {"pack", lot.pack},
          {"paid", lot.paid ? Json(amount_text(*lot.paid)) : Json(nullptr)},
          {"currency", lot.paid ? Json(lot.paid->currency.code) : Json(nullptr)},
          {"holds", amount_json(lot.holds.whole(), is_pieces)},
          {"left", amount_json(of.left, is_pieces)}};
}

Json count_json(const records::PieceCount& count) {
  if (!count.is_known) return {{"made", nullptr}};
  return {{"made", count.made},    {"rejected", count.rejected}, {"sold", count.sold},
          {"given", count.given},  {"spoilt", count.spoilt},     {"counted", count.counted},
          {"there", count.there()}};
}

Json notes_json(const std::vector<Remark>& notes) {
  Json json = Json::array();
  for (const Remark& note : notes)
    json.push_back({{"severity", name_of(note.severity)}, {"text", note.text}});
  return json;
}

std::string stock_json(const Stock& stock) {
  LongList materials("materials"), pieces("pieces");
  for (const auto& one : stock.materials) put_material(materials, one, stock.day);
  for (const auto& one : stock.pieces) pieces.put(pieces_json(one));
  Json json = {{"schema", "brimwright.stock/1"},
               {"folder", stock.folder},
               {"day", stock.day},
               {"has_records", stock.has_records},
               {"done", stock.done},
               {"materials", nullptr},
               {"pieces", nullptr},
               {"not_counted", stock.not_counted},
               {"notes", notes_json(stock.notes)}};
  if (stock.names) json["names"] = names_json(*stock.names);
  return json_document(json, {materials, pieces});
}

}  // namespace brimwright::reports
