#include "reports/json_document.h"
#include "reports/plan_words.h"
#include "reports/quote_tables.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

Json percents(const trade::Fraction& share) { return share.convert_to<double>() * 100; }

Json asking_json(const trade::Asking& asking) {
  if (const auto* margin = std::get_if<trade::Margin>(&asking))
    return {{"margin_percent", margin->of_price.in_percent()}};
  if (const auto* markup = std::get_if<trade::Markup>(&asking))
    return {{"markup_percent", markup->of_cost.in_percent()}};
  return {{"price", amount_text(std::get<trade::SetPrice>(asking).each)}};
}

/// The sums of a piece, and those of a whole order.
template <class Told>
Json told_json(const costing::SellingWay& way, const Told& told, const std::string& asked,
               const Place& where) {
  return {{"way", way.name},
          {"by", asking_json(way.asking)},
          {"ask", asked},
          {"with_tax", in_money(told.with_tax, where)},
          {"without_tax", in_money(told.without_tax, where)},
          {"tax", in_money(told.tax, where)},
          {"fees", in_money(told.fees, where)},
          {"profit", in_money(told.profit, where)},
          {"margin_percent", percents(told.margin)},
          {"markup_percent", percents(told.markup)},
          {"is_below_cost", told.profit.coins < 0}};
}

Json cash_json(const Buying& buying) {
  const auto& purchase = buying.purchase;
  Json packs = Json::array(), left = Json::array(), unpriced = Json::array();
  for (const auto& delivery : purchase.deliveries)
    for (const auto& bought : delivery.packs) {
      const trade::Pack& pack = buying.packs[bought.pack];
      packs.push_back({{"seller", delivery.seller},
                       {"shown_as", shown_as(buying, pack)},
                       {"count", bought.count},
                       {"holds", pack_size(pack.holds)},
                       {"sum", amount_text({bought.count * pack.paid.coins, pack.paid.currency})}});
    }
  for (const auto& one : buying.materials) {
    if (one.bought.whole() > 0)
      left.push_back({{"shown_as", one.shown}, {"left", amount_shown_down(one.left())}});
    if (one.is_unpriced) unpriced.push_back(one.shown);
  }
  return {{"total", purchase.total ? Json(amount_text(*purchase.total)) : Json(nullptr)},
          {"proved_cheapest", !purchase.at_least.has_value()},
          {"packs", packs},
          {"left", left},
          {"unpriced", unpriced}};
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
                     {"how", item.how},
                     {"from_tap", item.is_from_tap}});
  }
  for (const auto& [way, told] : number.prices)
    prices.push_back(told_json(way, told, amount_text(told.asked), where));
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

/// What is left to make; nothing where nothing is.
Json rest_json(const RestQuote& rest, const Place& where) {
  if (!rest.to_make) return nullptr;
  Json lines = Json::array();
  for (const auto& [run, number] : rest.to_make->lines) {
    lines.push_back(number_json(number, where));
    lines.back()["run"] = run;
  }
  return {{"pieces", rest.to_make->pieces},
          {"cost", amount_text(printed_cost(*rest.to_make, where))},
          {"unpriced", rest.to_make->unpriced},
          {"lines", lines}};
}

}  // namespace

std::string quote_json(const QuoteReport& report) {
  const auto& run = report.run;
  const auto& quote = report.quote;
  const auto& begun = report.pack_steps;
  const Place where{run.file, ""};
  Json numbers = Json::array(), steps = Json::array(), gaps = Json::array(), costs = Json::array();
  for (std::size_t i = 0; i < quote.numbers.size(); ++i) {
    numbers.push_back(number_json(quote.numbers[i], where));
    numbers.back()["cash"] = cash_json(report.purchases[i]);
  }
  for (const auto& step : quote.steps) steps.push_back(step_json(step, where));
  Json packs = Json::array(), untold = Json::array();
  for (const auto& [sell, material, shown, more] : begun.told)
    packs.push_back(
        {{"sell", sell}, {"material", material}, {"shown_as", shown}, {"more", amount_text(more)}});
  for (const auto& [material, shown, from, to] : begun.untold)
    untold.push_back({{"material", material},
                      {"shown_as", shown},
                      {"from", from},
                      {"to", to},
                      {"why", why_untold()}});
  for (const auto& gap : quote.gaps)
    gaps.push_back({{"from", gap.from}, {"to", gap.to}, {"why", gap.why}});
  for (const auto& [sell, each] : quote.costs)
    costs.push_back({{"sell", sell}, {"each", in_money(each, where)}});
  return json_document({{"schema", "brimwright.quote/1"},
                        {"run", run.name},
                        {"source", run.file},
                        {"currency", report.selling.currency.code},
                        {"has_tax", report.selling.tax.has_value()},
                        {"numbers", numbers},
                        {"steps", steps},
                        {"pack_steps", packs},
                        {"pack_steps_untold", untold},
                        {"gaps", gaps},
                        {"costs", costs},
                        {"remarks", notes_of(report)}});
}

std::string quote_json(const OrderQuoteReport& report) {
  const Place where{report.source, ""};
  Json times = Json::array();
  for (std::size_t i = 0; i < report.orders.size(); ++i) {
    const auto& order = report.orders[i];
    Json lines = Json::array(), prices = Json::array();
    for (const auto& [run, number] : order.lines) {
      lines.push_back(number_json(number, where));
      lines.back()["run"] = run;
    }
    for (const auto& price : order.prices)
      prices.push_back(told_json(price.way, price, in_money(price.asked, where), where));
    times.push_back({{"times", order.times},
                     {"pieces", order.pieces},
                     {"cost", amount_text(printed_cost(order, where))},
                     {"unpriced", order.unpriced},
                     {"lines", lines},
                     {"prices", prices},
                     {"together", together_json(report.together[i])},
                     {"ready", ready_json(report.rests[i].ready)},
                     {"rest", rest_json(report.rests[i], where)},
                     {"cash", cash_json(report.purchases[i])}});
  }
  return json_document({{"schema", "brimwright.order_quote/1"},
                        {"source", report.source},
                        {"for", report.whom_for},
                        {"due", report.due ? Json(iso_date(*report.due)) : Json(nullptr)},
                        {"currency", report.selling.currency.code},
                        {"has_tax", report.selling.tax.has_value()},
                        {"times", times},
                        {"remarks", notes_of(report)}});
}

}  // namespace brimwright::reports
