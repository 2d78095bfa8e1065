#include "reports/buying_report.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"
#include "reports/plan_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

/// "used_g", or "used_pieces" of what is counted.
void put_amount(Json& json, const std::string& what, const trade::Amount& amount) {
  if (amount.is_pieces())
    json[what + "_pieces"] = amount.whole();
  else
    json[what + "_g"] = to_decimals(amount.mass() / gram, 6);
}

Json material_json(const Buying::Material& one) {
  Json json = {{"material", one.name}, {"shown_as", one.shown}};
  put_amount(json, "used", one.used);
  json["waste_percent"] = to_decimals(one.waste.in_percent(), 4);
  put_amount(json, "needed", one.needed);
  put_amount(json, "have", one.have);
  put_amount(json, "to_buy", one.to_buy);
  if (one.to_make) put_amount(json, "to_make", *one.to_make);
  put_amount(json, "bought", one.bought);
  put_amount(json, "left", one.left());
  json["unpriced"] = one.is_unpriced;
  return json;
}

Json delivery_json(const trade::Delivery& delivery, const Buying& buying) {
  Json packs = Json::array();
  for (const auto& bought : delivery.packs) {
    const trade::Pack& pack = buying.packs[bought.pack];
    Json json = {
        {"material", pack.material}, {"shown_as", shown_as(buying, pack)}, {"count", bought.count}};
    if (!pack.make.empty()) json["make"] = pack.make;
    put_amount(json, "holds", pack.holds);
    json["paid"] = amount_text(pack.paid);
    json["sum"] = amount_text({bought.count * pack.paid.coins, pack.paid.currency});
    packs.push_back(std::move(json));
    if (pack.as_of) packs.back()["as_of"] = iso_date(*pack.as_of);
  }
  Json json = {{"seller", delivery.seller.empty() ? Json(nullptr) : Json(delivery.seller)},
               {"packs", packs},
               {"goods", amount_text(delivery.goods)},
               {"postage", delivery.postage ? Json(amount_text(*delivery.postage)) : Json(nullptr)},
               {"postage_falls_away", delivery.is_postage_free}};
  for (const trade::Seller& seller : buying.sellers)
    if (seller.name == delivery.seller && seller.lead_days) json["lead_days"] = *seller.lead_days;
  return json;
}

Json stock_json(const Buying::Stock& stock) {
  Json limits = Json::array();
  for (const auto& limit : stock.limited_by) {
    Json json = {{"material", limit.name}, {"shown_as", limit.shown}};
    put_amount(json, "needed", limit.needed);
    put_amount(json, "have", limit.have);
    limits.push_back(std::move(json));
  }
  return {{"pieces", stock.pieces},
          {"batches", stock.batches},
          {"short_for", stock.short_for ? Json(*stock.short_for) : Json(nullptr)},
          {"limited_by", limits}};
}

}  // namespace

std::string buying_json(const Buying& buying) {
  Json json = {{"schema", "brimwright.buy/1"}, {"studio", buying.studio}};
  json["runs"] = Json::array();
  for (const auto& run : buying.runs) {
    Json told = {{"file", run.file}, {"name", run.name}, {"sell", run.sell}, {"make", run.make}};
    if (!run.order.empty()) told["order"] = run.order;
    json["runs"].push_back(std::move(told));
  }
  json["together"] = Json::array();
  for (const auto& [order, lines] : buying.together) {
    for (Json& one : together_json({lines})) {
      one["order"] = order;
      json["together"].push_back(std::move(one));
    }
  }
  json["ready"] = Json::array();
  for (const ReadyOrder& order : buying.ready) json["ready"].push_back(ready_json(order));
  json["materials"] = Json::array();
  for (const auto& one : buying.materials) json["materials"].push_back(material_json(one));
  json["deliveries"] = Json::array();
  for (const auto& one : buying.purchase.deliveries)
    json["deliveries"].push_back(delivery_json(one, buying));
  const auto& total = buying.purchase.total;
  const auto& least = buying.purchase.at_least;
  json["currency"] = total ? Json(total->currency.code) : Json(nullptr);
  json["total"] = total ? Json(amount_text(*total)) : Json(nullptr);
  json["proved_cheapest"] = !least;
  if (least) json["at_least"] = amount_text(*least);
  json["unpriced"] = Json::array();
  for (const auto& one : buying.materials)
    if (one.is_unpriced) json["unpriced"].push_back(one.name);
  if (buying.stock) json["with_stock"] = stock_json(*buying.stock);
  json["notes"] = Json::array();
  for (const Remark& note : buying.notes)
    json["notes"].push_back({{"severity", name_of(note.severity)}, {"text", note.text}});
  return json_document(json);
}

}  // namespace brimwright::reports
