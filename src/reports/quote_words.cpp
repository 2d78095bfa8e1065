#include "reports/quote_report.h"
#include "trade/printed.h"

#include <algorithm>
#include <array>

namespace brimwright::reports {
namespace {

using costing::CostPart;
using trade::ExactMoney;

constexpr std::array parts_in_order = {
    CostPart::base,      CostPart::topping, CostPart::decorations, CostPart::dust,
    CostPart::packaging, CostPart::work,    CostPart::overhead};

Money nearest(const ExactMoney& money, const Place& where) {
  return trade::to_coin(money, trade::ToCoin::nearest, where);
}

std::string with_and(const std::vector<std::string>& words) {
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i)
    text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
  return text;
}

}  // namespace

std::string name_of(CostPart part) {
  switch (part) {
    case CostPart::base:
      return "Base";
    case CostPart::topping:
      return "Topping";
    case CostPart::decorations:
      return "Decorations";
    case CostPart::dust:
      return "Dust";
    case CostPart::packaging:
      return "Packaging";
    case CostPart::work:
      return "Work";
    case CostPart::overhead:
      return "Overhead";
  }
  return "";
}

PrintedCost printed(const costing::QuotedNumber& number, const Place& where) {
  PrintedCost cost{.each = nearest(number.each, where),
                   .parts = {},
                   .total = nearest(number.total, where),
                   .items = {}};
  const Currency& currency = number.total.currency;
  std::vector<ExactMoney> items, parts;
  for (const auto& item : number.items)
    items.push_back(item.cost.value_or(ExactMoney{0, currency}));
  cost.items = trade::printed_parts(items, cost.total);
  for (const CostPart part : parts_in_order) {
    ExactMoney sum{0, currency};
    bool is_any = false;
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (number.items[i].part != part) continue;
      sum = sum + items[i];
      is_any = true;
    }
    if (!is_any) continue;
    cost.parts.push_back({part, {}});
    parts.push_back(trade::Fraction(1) / number.pieces.sell * sum);
  }
  const auto coins = trade::printed_parts(parts, cost.each);
  for (std::size_t i = 0; i < coins.size(); ++i) cost.parts[i].each = coins[i];
  return cost;
}

std::string step_words(const costing::Step& step) {
  std::vector<std::string> begins;
  const auto say = [&](std::int64_t before, std::int64_t after, const std::string& one,
                       const std::string& many) {
    if (after == before + 1) begins.push_back("another " + one);
    if (after > before + 1) begins.push_back(std::to_string(after - before) + " more " + many);
  };
  say(step.before.fillings, step.after.fillings, "filling", "fillings");
  say(step.before.batches, step.after.batches, "batch", "batches");
  say(step.before.tray_fills, step.after.tray_fills, "tray fill", "tray fills");
  say(step.before.bags, step.after.bags, "bag", "bags");
  return with_and(begins);
}

}  // namespace brimwright::reports
