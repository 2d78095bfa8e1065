#include "trade/pricing.h"

#include "units/user_error.h"

#include <algorithm>

namespace brimwright::trade {
namespace {

Fraction with_tax(const std::optional<Tax>& tax) {
  return tax ? Fraction(1 + exact(tax->rate)) : Fraction(1);
}

/// What selling takes of the price without tax.
Fraction fee_share(const PriceQuestion& question) {
  if (!question.fees) return 0;
  return exact(question.fees->of_price) * with_tax(question.tax);
}

Fraction fee_each(const PriceQuestion& question) {
  if (!question.fees) return 0;
  return Fraction(question.fees->each_order.coins) / question.pieces;
}

/// Nothing where the price is set.
std::optional<Fraction> wanted_without_tax(const PriceQuestion& question, const Place& where) {
  const Fraction cost = question.cost_each.coins;
  Fraction over, under = 1 - fee_share(question);
  if (const auto* margin = std::get_if<Margin>(&question.asking)) {
    over = cost + fee_each(question);
    under -= exact(margin->of_price);
  } else if (const auto* markup = std::get_if<Markup>(&question.asking)) {
    over = cost * (1 + exact(markup->of_cost)) + fee_each(question);
  } else {
    return std::nullopt;
  }
  if (under <= 0)
    throw UserError(where, "leaves nothing of the price once selling has taken its share",
                    "give a smaller margin, or look at the fees");
  return over / under;
}

/// The lowest number of coins, not below `least`, that ends in one of `endings`. They repeat with
/// the power of ten above the largest: "0.90" in each unit, "9.90" in each ten.
std::int64_t ending_from(std::int64_t least, const std::vector<Money>& endings) {
  if (endings.empty()) return least;
  std::int64_t largest = 0;
  for (const Money& ending : endings) largest = std::max(largest, ending.coins);
  std::int64_t round = 10;
  while (round <= largest) round *= 10;
  std::optional<std::int64_t> lowest;
  for (const Money& ending : endings) {
    const std::int64_t below = least > ending.coins ? least - ending.coins : 0;
    const std::int64_t at = ending.coins + (below + round - 1) / round * round;
    if (!lowest || at < *lowest) lowest = at;
  }
  return *lowest;
}

Money asked_price(const PriceQuestion& question, const Place& where) {
  if (const auto* set = std::get_if<SetPrice>(&question.asking)) return set->each;
  ExactMoney wanted{*wanted_without_tax(question, where), question.cost_each.currency};
  if (question.tax && question.tax->is_in_asked) wanted.coins *= with_tax(question.tax);
  Money asked = to_coin(wanted, ToCoin::up, where);
  asked.coins = ending_from(asked.coins, question.endings);
  return asked;
}

}  // namespace

PriceTold price_of(const PriceQuestion& question, const Place& where) {
  const ExactMoney& cost = question.cost_each;
  if (cost.coins <= 0)
    throw UserError(where, "cannot be told: a piece costs nothing",
                    "give the prices of what goes into it");
  const Money asked = asked_price(question, where);
  if (asked.coins <= 0) throw UserError(where, "is zero", "give a price above zero");
  const Fraction rate = with_tax(question.tax);
  const bool has_tax = question.tax && question.tax->is_in_asked;
  const Fraction net = has_tax ? Fraction(asked.coins / rate) : Fraction(asked.coins);
  const Fraction fees = net * fee_share(question) + fee_each(question);
  const Fraction profit = net - fees - cost.coins;
  const auto money = [&](Fraction coins) { return ExactMoney{std::move(coins), cost.currency}; };
  return {.asked = asked,
          .with_tax = money(net * rate),
          .without_tax = money(net),
          .tax = money(net * (rate - 1)),
          .fees = money(fees),
          .profit = money(profit),
          .margin = profit / net,
          .markup = profit / cost.coins};
}

}  // namespace brimwright::trade
