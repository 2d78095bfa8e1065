#include "reports/json_document.h"
#include "reports/quote_report.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

Json percents(const trade::Fraction& share) { return share.convert_to<double>() * 100; }

std::string in_money(const trade::ExactMoney& money, const Place& where) {
  return amount_text(trade::to_coin(money, trade::ToCoin::nearest, where));
}

Json asking_json(const trade::Asking& asking) {
  if (const auto* margin = std::get_if<trade::Margin>(&asking))
    return {{"margin_percent", margin->of_price.in_percent()}};
  if (const auto* markup = std::get_if<trade::Markup>(&asking))
    return {{"markup_percent", markup->of_cost.in_percent()}};
  return {{"price", amount_text(std::get<trade::SetPrice>(asking).each)}};
}

Json price_json(const costing::QuotedPrice& price, const Place& where) {
  const auto& told = price.told;
  return {{"way", price.way.name},
          {"by", asking_json(price.way.asking)},
          {"ask", amount_text(told.asked)},
          {"with_tax", in_money(told.with_tax, where)},
          {"without_tax", in_money(told.without_tax, where)},
          {"tax", in_money(told.tax, where)},
          {"fees", in_money(told.fees, where)},
          {"profit", in_money(told.profit, where)},
          {"margin_percent", percents(told.margin)},
          {"markup_percent", percents(told.markup)},
          {"is_below_cost", told.profit.coins < 0}};
}

Json around_json(const std::vector<planning::Around>& around) {
  Json json = Json::array();
  for (const auto& one : around) json.push_back({{"sell", one.sell}, {"text", one.text}});
  return json;
}

Json number_json(const costing::QuotedNumber& number, const Place& where) {
  const PrintedCost cost = printed(number, where);
  Json parts = Json::array(), items = Json::array(), prices = Json::array();
  for (const auto& [part, each] : cost.parts)
    parts.push_back({{"part", name_of(part)}, {"each", amount_text(each)}});
  for (std::size_t i = 0; i < number.items.size(); ++i) {
    const auto& item = number.items[i];
    items.push_back({{"part", name_of(item.part)},
                     {"name", item.name},
                     {"amount", item.amount},
                     {"cost", item.cost ? Json(amount_text(cost.items[i])) : Json(nullptr)},
                     {"how", item.how}});
  }
  for (const auto& price : number.prices) prices.push_back(price_json(price, where));
  const auto& pieces = number.pieces;
  return {{"sell", pieces.sell},
          {"make", pieces.make},
          {"fillings", pieces.fillings},
          {"batches", pieces.batches},
          {"to_stock", pieces.to_stock},
          {"cost_each", amount_text(cost.each)},
          {"cost", amount_text(cost.total)},
          {"parts", parts},
          {"items", items},
          {"unpriced", number.unpriced},
          {"prices", prices},
          {"around", around_json(number.around)},
          {"dangers", number.dangers}};
}

Json step_json(const costing::Step& step, const Place& where) {
  return {{"sell", step.sell},
          {"begins", step_words(step)},
          {"fillings", step.after.fillings},
          {"batches", step.after.batches},
          {"tray_fills", step.after.tray_fills},
          {"bags", step.after.bags},
          {"more", step.more ? Json(in_money(*step.more, where)) : Json(nullptr)}};
}

}  // namespace

std::string quote_json(const planning::Run& run, const costing::Quote& quote,
                       const costing::Selling& selling) {
  const Place where{run.file, ""};
  Json numbers = Json::array(), steps = Json::array(), gaps = Json::array();
  for (const auto& number : quote.numbers) numbers.push_back(number_json(number, where));
  for (const auto& step : quote.steps) steps.push_back(step_json(step, where));
  for (const auto& gap : quote.gaps)
    gaps.push_back({{"from", gap.from}, {"to", gap.to}, {"why", gap.why}});
  return json_document({{"schema", "brimwright.quote/1"},
                        {"run", run.name},
                        {"source", run.file},
                        {"currency", selling.currency.code},
                        {"has_tax", selling.tax.has_value()},
                        {"numbers", numbers},
                        {"steps", steps},
                        {"gaps", gaps}});
}

}  // namespace brimwright::reports
