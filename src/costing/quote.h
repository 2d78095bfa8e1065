#pragma once

#include "costing/cost_items.h"
#include "costing/selling.h"
#include "planning/tally.h"
#include "trade/fraction.h"
#include "trade/pricing.h"
#include "units/user_error.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::costing {

/// A price by one way of selling.
struct QuotedPrice {
  SellingWay way;
  trade::PriceTold told;
};

/// What so many pieces cost, and what to ask for each.
struct QuotedNumber {
  planning::Pieces pieces;
  std::vector<CostItem> items;
  trade::ExactMoney total, each;  // of what has a price; each saleable piece
  std::vector<std::string> unpriced;
  /// None while something is unpriced: a price without it would be too low.
  std::vector<QuotedPrice> prices;
  std::vector<planning::Around> around;  // what another number of pieces does
  std::vector<std::string> dangers;      // of the plan: what could make a soap that burns
};

/// What goes up by a whole when a run gets larger.
struct Wholes {
  std::int64_t fillings = 0, batches = 0, tray_fills = 0, bags = 0;
  bool operator==(const Wholes&) const = default;
};

/// A number of pieces at which another whole begins, or below which none can be made.
struct Step {
  std::int64_t sell = 0;
  Wholes before, after;
  std::optional<trade::ExactMoney> more;  // than one piece fewer costs; nothing while unpriced
};

/// Numbers of pieces, one after the other, that cannot be made, and why the largest cannot.
struct Gap {
  std::int64_t from = 0, to = 0;
  std::string why;
};

/// What a piece costs where so many are sold.
struct CostAt {
  std::int64_t sell = 0;
  trade::ExactMoney each;
};

struct Quote {
  std::vector<QuotedNumber> numbers;
  std::vector<CostAt> costs;  // of every number up to there that can be made and is priced
  std::vector<Step> steps;    // from 1 to twice the largest number asked about
  std::vector<Gap> gaps;
};

/// Plans the run for so many pieces. UserError where that many cannot be made.
using PlanFor = std::function<planning::Plan(std::int64_t sell)>;

/// One number of pieces, of its finished plan, in an order of `ordered` pieces, over which what
/// each order costs is spread. UserError at `where` where there can be no price.
QuotedNumber quoted_number(const planning::Plan& plan, const Selling& selling, std::int64_t ordered,
                           const Place& where);
/// The same where `items` are what it costs.
QuotedNumber quoted_number(const planning::Plan& plan, std::vector<CostItem> items,
                           const Selling& selling, std::int64_t ordered, const Place& where);

/// The numbers asked about side by side, and every step up to twice the largest of them, each found
/// by planning all numbers one by one: what can be made has gaps, so nothing is skipped. For the
/// steps amounts alone are planned (planning::amounts_for).
Quote quote(const std::vector<std::int64_t>& numbers, const PlanFor& plan_for,
            const PlanFor& amounts_for, const Selling& selling, const Place& where);

}  // namespace brimwright::costing
