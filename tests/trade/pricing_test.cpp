#include "trade/pricing.h"

#include "trade/printed.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <numeric>

using namespace brimwright;
using namespace brimwright::trade;
using Catch::Matchers::Contains;

namespace {

const Place here{"studio.json", "/asking/retail"};
const Currency eur = currency("EUR", here);

ExactMoney coins(std::int64_t number, const Currency& of = eur) { return exact(Money{number, of}); }

PriceTold told(ExactMoney cost, Asking asking) {
  return price_of({.cost_each = std::move(cost), .asking = std::move(asking)}, here);
}

Share random_share(int most_percent) {
  return *rc::gen::inRange(0, most_percent * 10) * (0.1 * percent);
}

/// Any question whose price comes about.
PriceQuestion random_question() {
  PriceQuestion question{.cost_each = {Fraction(*rc::gen::inRange(1, 5'000'000)) / 1000, eur},
                         .pieces = *rc::gen::inRange(1, 500),
                         .asking = Margin{random_share(60)}};
  if (*rc::gen::arbitrary<bool>()) question.asking = Markup{random_share(400)};
  if (*rc::gen::arbitrary<bool>())
    question.tax = Tax{random_share(27), *rc::gen::arbitrary<bool>(), *rc::gen::arbitrary<bool>()};
  if (*rc::gen::arbitrary<bool>())
    question.fees = Fees{random_share(20), {*rc::gen::inRange(0, 1000), eur}};
  if (*rc::gen::arbitrary<bool>()) question.endings = {{90, eur}, {50, eur}};
  return question;
}

}  // namespace

TEST_CASE("a markup is of the cost, a margin of the price", "[trade]") {
  // Bought at 6.00 and sold at 7.20: a markup of 20 % of the cost (worked example of reference.com,
  // "How do you calculate the mark up of a product?"), and 1.20 / 7.20 of the price.
  const PriceTold by_markup = told(coins(600), Markup{20 * percent});
  CHECK(by_markup.asked == Money{720, eur});
  CHECK(by_markup.margin == Fraction(1) / 6);
  const PriceTold by_price = told(coins(600), SetPrice{{720, eur}});
  CHECK(by_price.markup == Fraction(1) / 5);
  CHECK(by_price.profit.coins == 120);
  // Rates of markup on cost M / C and on the selling price M / S (Centennial College, Learning
  // Centre, "Markup"): half of the price is all of the cost.
  CHECK(told(coins(500), Margin{50 * percent}).asked == told(coins(500), Markup{whole}).asked);
}

TEST_CASE("tax of 20 % is a sixth of a price that contains it", "[trade]") {
  // VAT fraction 1/6 at 20 %: HMRC, VAT guide (VAT Notice 700), from memory.
  const Tax tax{20 * percent, false, true};
  const PriceTold price =
      price_of({.cost_each = coins(5000), .tax = tax, .asking = SetPrice{{12000, eur}}}, here);
  CHECK(price.tax.coins == 2000);
  CHECK(price.without_tax.coins == 10000);
  CHECK(price.margin == Fraction(1) / 2);
  // Asked without it, tax comes on top.
  const PriceTold bare = price_of({.cost_each = coins(5000),
                                   .tax = Tax{20 * percent, false, false},
                                   .asking = SetPrice{{10000, eur}}},
                                  here);
  CHECK(bare.with_tax.coins == 12000);
}

TEST_CASE("what selling takes is inside the price", "[trade]") {
  // price = (cost + fixed) / (1 - margin - share) = (2.00 + 0.30) / (1 - 0.40 - 0.10) = 4.60
  const PriceTold price = price_of({.cost_each = coins(200),
                                    .fees = Fees{10 * percent, {30, eur}},
                                    .asking = Margin{40 * percent}},
                                   here);
  CHECK(price.asked == Money{460, eur});
  CHECK(price.fees.coins == 76);
  CHECK(price.profit.coins == 184);
}

TEST_CASE("prices are rounded up to the coins that a currency has", "[trade]") {
  // ISO 4217, list one: the yen has no smaller coin, the Kuwaiti dinar thousandths.
  const auto asked = [](const char* code, Fraction cost) {
    return amount_text(told({std::move(cost), currency(code, here)}, Markup{0 * percent}).asked);
  };
  CHECK(asked("JPY", Fraction(1001) / 10) == "101");
  CHECK(asked("EUR", Fraction(1001) / 10) == "1.01");
  CHECK(asked("KWD", Fraction(1001) / 10) == "0.101");
  CHECK(asked("EUR", 100) == "1.00");
}

TEST_CASE("a price ends as she wants it, and never below what it must be", "[trade]") {
  const auto asked = [](std::int64_t cost, std::vector<Money> endings) {
    return price_of({.cost_each = coins(cost),
                     .asking = Markup{0 * percent},
                     .endings = std::move(endings)},
                    here)
        .asked.coins;
  };
  const std::vector<Money> ends = {{90, eur}, {50, eur}};
  CHECK(asked(451, ends) == 490);
  CHECK(asked(450, ends) == 450);
  CHECK(asked(491, ends) == 550);
  CHECK(asked(491, {{990, eur}}) == 990);  // "9.90" repeats in each ten
  CHECK(asked(991, {{990, eur}}) == 1990);
}

TEST_CASE("a price that cannot come about is refused", "[trade]") {
  CHECK_THROWS_WITH(price_of({.cost_each = coins(100),
                              .fees = Fees{50 * percent, {0, eur}},
                              .asking = Margin{50 * percent}},
                             here),
                    Contains("leaves nothing of the price"));
  CHECK_THROWS_WITH(told(coins(0), Margin{50 * percent}), Contains("costs nothing"));
  const Fraction absurd = boost::multiprecision::pow(boost::multiprecision::cpp_int(10), 16);
  CHECK_THROWS_WITH(told({absurd, eur}, Margin{50 * percent}), Contains("more than any price"));
}

TEST_CASE("a price sold below cost says so by its sign", "[trade]") {
  const PriceTold price = told(coins(600), SetPrice{{500, eur}});
  CHECK(price.profit.coins == -100);
  CHECK(price.margin == Fraction(-1) / 5);
}

TEST_CASE("a price gives at least what was wanted of it", "[trade][law]") {
  rc::prop("profit is at least the margin or the markup, and a coin less is not enough", [] {
    const PriceQuestion question = random_question();
    const PriceTold price = price_of(question, here);
    const auto is_enough = [&](const PriceTold& one) {
      if (const auto* margin = std::get_if<Margin>(&question.asking))
        return one.margin >= exact(margin->of_price);
      return one.markup >= exact(std::get<Markup>(question.asking).of_cost);
    };
    RC_ASSERT(is_enough(price));
    if (!question.endings.empty() || price.asked.coins == 1) return;
    PriceQuestion less = question;
    less.asking = SetPrice{{price.asked.coins - 1, eur}};
    RC_ASSERT(!is_enough(price_of(less, here)));
  });
  rc::prop("price without tax = cost + fees + profit", [] {
    const PriceQuestion question = random_question();
    const PriceTold price = price_of(question, here);
    RC_ASSERT(price.without_tax.coins ==
              question.cost_each.coins + price.fees.coins + price.profit.coins);
    RC_ASSERT(price.with_tax.coins == price.without_tax.coins + price.tax.coins);
  });
}

TEST_CASE("printed parts add to the printed whole", "[trade][law]") {
  rc::prop("to the coin, none off by a whole one", [] {
    std::vector<ExactMoney> parts;
    ExactMoney sum{0, eur};
    for (int i = *rc::gen::inRange(1, 12); i > 0; --i) {
      parts.push_back({Fraction(*rc::gen::inRange(0, 1'000'000)) / *rc::gen::inRange(1, 997), eur});
      sum = sum + parts.back();
    }
    const Money total = to_coin(sum, ToCoin::nearest, here);
    const auto printed = printed_parts(parts, total);
    const auto all = std::accumulate(printed.begin(), printed.end(), std::int64_t{0},
                                     [](auto t, const Money& one) { return t + one.coins; });
    RC_ASSERT(all == total.coins);
    for (std::size_t i = 0; i < parts.size(); ++i)
      RC_ASSERT(abs(Fraction(printed[i].coins) - parts[i].coins) < 1);
  });
}

TEST_CASE("a number is taken as it was typed", "[trade]") {
  CHECK(exact(0.1) == Fraction(1) / 10);
  CHECK(exact(Share::of_one(0.35)) == Fraction(35) / 100);  // as "35 %" is read
  CHECK(exact(1.5e9) == 1'500'000'000);
  CHECK(exact(0.0) == 0);
  CHECK(exact(2.5e-7) == Fraction(25) / 100'000'000);
}
