#pragma once

#include "costing/quote.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::costing {

/// A run's part in an order.
struct QuotedLine {
  std::string run;  // its name
  QuotedNumber number;
};

/// What all pieces of an order come to by one way of selling.
struct OrderPrice {
  SellingWay way;
  trade::ExactMoney asked, with_tax, without_tax, tax, fees, profit;
  trade::Fraction margin, markup;  // of the sums
};

/// An order, or so many times the pieces of one.
struct QuotedOrder {
  std::int64_t times = 1, pieces = 0;
  std::vector<QuotedLine> lines;  // in the order's order
  trade::ExactMoney cost;         // of what has a price
  std::vector<std::string> unpriced;
  std::vector<OrderPrice> prices;  // none while something is unpriced
};

/// Puts the lines of an order together, all quoted by the same ways of selling, as for an order of
/// that many pieces.
QuotedOrder quoted_order(std::int64_t times, std::vector<QuotedLine> lines);

}  // namespace brimwright::costing
