#include "costing/order_quote.h"

#include <algorithm>
#include <utility>

namespace brimwright::costing {
namespace {

using trade::ExactMoney;
using trade::Fraction;

/// By the `which`-th way of selling.
OrderPrice price_by(std::size_t which, const QuotedOrder& order) {
  const auto& first = order.lines.front().number;
  const ExactMoney none{0, first.total.currency};
  OrderPrice sum{.way = first.prices[which].way,
                 .asked = none,
                 .with_tax = none,
                 .without_tax = none,
                 .tax = none,
                 .fees = none,
                 .profit = none,
                 .margin = 0,
                 .markup = 0};
  for (const auto& [run, number] : order.lines) {
    const trade::PriceTold& each = number.prices[which].told;
    const Fraction pieces(number.pieces.sell);
    sum.asked = sum.asked + pieces * trade::exact(each.asked);
    sum.with_tax = sum.with_tax + pieces * each.with_tax;
    sum.without_tax = sum.without_tax + pieces * each.without_tax;
    sum.tax = sum.tax + pieces * each.tax;
    sum.fees = sum.fees + pieces * each.fees;
    sum.profit = sum.profit + pieces * each.profit;
  }
  sum.margin = sum.profit.coins / sum.without_tax.coins;
  sum.markup = sum.profit.coins / order.cost.coins;
  return sum;
}

}  // namespace

QuotedOrder quoted_order(std::int64_t times, std::vector<QuotedLine> lines) {
  QuotedOrder order{.times = times,
                    .pieces = 0,
                    .lines = std::move(lines),
                    .cost = {},
                    .unpriced = {},
                    .prices = {}};
  order.cost = {0, order.lines.front().number.total.currency};
  for (const auto& [run, number] : order.lines) {
    order.pieces += number.pieces.sell;
    order.cost = order.cost + number.total;
    for (const std::string& name : number.unpriced)
      if (std::find(order.unpriced.begin(), order.unpriced.end(), name) == order.unpriced.end())
        order.unpriced.push_back(name);
  }
  if (!order.unpriced.empty()) return order;
  for (std::size_t way = 0; way < order.lines.front().number.prices.size(); ++way)
    order.prices.push_back(price_by(way, order));
  return order;
}

}  // namespace brimwright::costing
