#include "costing/quote.h"

#include <algorithm>
#include <utility>

namespace brimwright::costing {
namespace {

Wholes wholes_of(const planning::Plan& plan) {
  Wholes wholes{.fillings = plan.pieces.fillings, .batches = plan.pieces.batches};
  for (const auto& decoration : plan.decorations) wholes.tray_fills += decoration.tray_fills;
  for (const auto& batch : plan.batches)
    for (const auto& whipping : batch.whippings)
      wholes.bags += batch.count() * whipping.count * whipping.pipe.loads.value_or(0);
  return wholes;
}

bool is_more(const Wholes& before, const Wholes& after) {
  return after.fillings > before.fillings || after.batches > before.batches ||
         after.tray_fills > before.tray_fills || after.bags > before.bags;
}

/// What is looked at of every number in between.
struct Looked {
  Wholes wholes;
  std::optional<trade::ExactMoney> cost;  // nothing while something is unpriced
};

class Steps {
 public:
  void look(std::int64_t sell, Looked now) {
    if (now.cost) costs_.push_back({sell, trade::Fraction(1) / sell * *now.cost});
    if (before_ && is_more(before_->wholes, now.wholes)) {
      Step step{.sell = sell, .before = before_->wholes, .after = now.wholes, .more = {}};
      if (before_->cost && now.cost) step.more = *now.cost - *before_->cost;
      steps_.push_back(std::move(step));
    }
    before_ = std::move(now);
  }

  void cannot(std::int64_t sell, const std::string& why) {
    if (gaps_.empty() || gaps_.back().to != sell - 1) gaps_.push_back({sell, sell, why});
    gaps_.back().to = sell;
    gaps_.back().why = why;
    before_.reset();
  }

  void move_into(Quote& quote) {
    quote.steps = std::move(steps_);
    quote.gaps = std::move(gaps_);
    quote.costs = std::move(costs_);
  }

 private:
  std::optional<Looked> before_;
  std::vector<Step> steps_;
  std::vector<Gap> gaps_;
  std::vector<CostAt> costs_;
};

Looked looked_at(const planning::Plan& plan, const Selling& selling) {
  Looked looked{.wholes = wholes_of(plan), .cost = {}};
  const auto items = cost_items(plan, selling);
  if (unpriced(items).empty()) looked.cost = sum_of(items, selling.currency);
  return looked;
}

}  // namespace

QuotedNumber quoted_number(const planning::Plan& plan, const Selling& selling, std::int64_t ordered,
                           const Place& where) {
  return quoted_number(plan, cost_items(plan, selling), selling, ordered, where);
}

QuotedNumber quoted_number(const planning::Plan& plan, std::vector<CostItem> items,
                           const Selling& selling, std::int64_t ordered, const Place& where) {
  QuotedNumber quoted{.pieces = plan.pieces,
                      .items = std::move(items),
                      .total = {},
                      .each = {},
                      .unpriced = {},
                      .prices = {},
                      .around = plan.around,
                      .dangers = {}};
  for (const auto& caution : plan.cautions)
    if (caution.severity == Severity::danger) quoted.dangers.push_back(caution.text);
  quoted.total = sum_of(quoted.items, selling.currency);
  quoted.each = trade::Fraction(1) / plan.pieces.sell * quoted.total;
  quoted.unpriced = unpriced(quoted.items);
  if (!quoted.unpriced.empty()) return quoted;
  for (const SellingWay& way : selling.ways)
    quoted.prices.push_back({way, trade::price_of({.cost_each = quoted.each,
                                                   .pieces = ordered,
                                                   .tax = selling.tax,
                                                   .fees = selling.fees,
                                                   .asking = way.asking,
                                                   .endings = selling.endings},
                                                  where)});
  return quoted;
}

Quote quote(const std::vector<std::int64_t>& numbers, const PlanFor& plan_for,
            const PlanFor& amounts_for, const Selling& selling, const Place& where) {
  Quote quote;
  for (const std::int64_t sell : numbers)
    quote.numbers.push_back(quoted_number(plan_for(sell), selling, sell, where));
  Steps steps;
  const std::int64_t largest = *std::max_element(numbers.begin(), numbers.end());
  for (std::int64_t sell = 1; sell <= 2 * largest; ++sell) {
    try {
      steps.look(sell, looked_at(amounts_for(sell), selling));
    } catch (const UserError& error) {
      steps.cannot(sell, error.parts().problem);
    }
  }
  steps.move_into(quote);
  return quote;
}

}  // namespace brimwright::costing
