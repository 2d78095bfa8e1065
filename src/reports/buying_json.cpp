#include "reports/buying_report.h"
#include "reports/json_document.h"
#include "reports/json_numbers.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

double grams(const trade::Amount& amount) { return to_decimals(amount.mass() / gram, 6); }

Json material_json(const Buying::Material& one) {
  Json json = {{"material", one.name},
               {"shown_as", one.shown},
               {"used_g", grams(one.used)},
               {"waste_percent", to_decimals(one.waste.in_percent(), 4)},
               {"needed_g", grams(one.needed)},
               {"have_g", grams(one.have)},
               {"to_buy_g", grams(one.to_buy)},
               {"bought_g", grams(one.bought)},
               {"left_g", grams((one.have + one.bought).less(one.needed))}};
  json["unpriced"] = one.is_unpriced;
  return json;
}

Json delivery_json(const trade::Delivery& delivery, const Buying& buying) {
  Json packs = Json::array();
  for (const auto& bought : delivery.packs) {
    const trade::Pack& pack = buying.packs[bought.pack];
    packs.push_back({{"material", pack.material},
                     {"shown_as", shown_as(buying, pack.material)},
                     {"count", bought.count},
                     {"holds_g", grams(pack.holds)},
                     {"paid", amount_text(pack.paid)},
                     {"sum", amount_text({bought.count * pack.paid.coins, pack.paid.currency})}});
    if (pack.as_of) {
      const auto two = [](unsigned number) {
        return (number < 10 ? "0" : "") + std::to_string(number);
      };
      packs.back()["as_of"] = std::to_string(static_cast<int>(pack.as_of->year())) + "-" +
                              two(static_cast<unsigned>(pack.as_of->month())) + "-" +
                              two(static_cast<unsigned>(pack.as_of->day()));
    }
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
  for (const auto& limit : stock.limited_by)
    limits.push_back({{"material", limit.name},
                      {"shown_as", limit.shown},
                      {"needed_g", grams(limit.needed)},
                      {"have_g", grams(limit.have)}});
  return {{"pieces", stock.pieces},
          {"batches", stock.batches},
          {"short_for", stock.short_for ? Json(*stock.short_for) : Json(nullptr)},
          {"limited_by", limits}};
}

}  // namespace

std::string buying_json(const Buying& buying) {
  Json json = {{"schema", "brimwright.buy/1"}, {"studio", buying.studio}};
  for (const auto& run : buying.runs)
    json["runs"].push_back(
        {{"file", run.file}, {"name", run.name}, {"sell", run.sell}, {"make", run.make}});
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
