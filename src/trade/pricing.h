#pragma once

#include "trade/fraction.h"
#include "units/money.h"
#include "units/share.h"

#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

namespace brimwright::trade {

/// Tax on sales, at one rate; whether it is in the prices that she pays and that she asks. What she
/// pays of it is taken to come back to her, so that it is no cost: whoever is exempt has no `Tax`.
struct Tax {
  Share rate;
  bool is_in_paid = false, is_in_asked = false;
};

/// What selling takes: a share of what the buyer pays, tax included, and a sum for each order.
struct Fees {
  Share of_price;
  Money each_order;
};

/// Profit as a share of the price without tax.
struct Margin {
  Share of_price;
};
/// Profit as a share of the cost.
struct Markup {
  Share of_cost;
};
/// A price that is set: with tax where the prices asked contain it.
struct SetPrice {
  Money each;
};
using Asking = std::variant<Margin, Markup, SetPrice>;

struct PriceQuestion {
  ExactMoney cost_each;     // without tax
  std::int64_t pieces = 1;  // of the order, over which what each order costs is spread
  std::optional<Tax> tax = {};
  std::optional<Fees> fees = {};
  Asking asking;
  /// What a price may end in ("0.90"); none: any coin. A price that is set stays as it is.
  std::vector<Money> endings = {};
};

/// A price and where it goes: price_net = cost + fees + profit, each for one piece.
struct PriceTold {
  Money asked;  // as it is asked: rounded up to the coin, or to an ending
  ExactMoney with_tax, without_tax, tax, fees, profit;
  Fraction margin, markup;  // of the price as it is asked
};

/// The price of a piece. With n the price without tax, t the tax rate, s and f what selling takes
/// of the price and of each piece, c the cost and m the margin: m n = n - s n (1 + t) - f - c, so
/// n = (c + f) / (1 - m - s (1 + t)); with a markup u instead: n = (c (1 + u) + f) / (1 - s (1 +
/// t)). Both are definitions, as in any textbook of business arithmetic. UserError at `where` when
/// fees and margin leave nothing of the price, when the cost is nothing, or the price absurd.
PriceTold price_of(const PriceQuestion& question, const Place& where);

}  // namespace brimwright::trade
