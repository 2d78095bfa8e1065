#include "units/money.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <numeric>

using namespace brimwright;
using Catch::Matchers::Contains;

namespace {
const Place here{"run.json", "/money/prices/olive/paid"};
const Currency eur{"EUR", 2};
}  // namespace

TEST_CASE("money keeps every coin", "[units]") {
  CHECK(read_money("32.50", eur, here).coins == 3250);
  CHECK(read_money("32,5", eur, here).coins == 3250);
  CHECK(read_money("7", eur, here).coins == 700);
  CHECK(amount_text({3205, eur}) == "32.05");
  CHECK(amount_text({-5, eur}) == "-0.05");
  // ISO 4217: the yen has no minor unit, the Kuwaiti dinar three decimals.
  CHECK(amount_text(read_money("950", currency("JPY", here), here)) == "950");
  CHECK(read_money("1.250", currency("KWD", here), here).coins == 1250);
}

TEST_CASE("what is no amount of money is refused", "[units]") {
  const auto [text, said] = GENERATE(table<std::string, std::string>({
      {"32.505", "smaller coins than EUR knows"},
      {"1,000", "may mean thousands or decimals"},
      {"EUR 3", "is no amount of money"},
      {"-3", "is negative"},
      {".99", "has no figure before its point"},
      {"1,234.50", "is no amount of money"},
      {"", "is no amount of money"},
      {"9999999999", "is more than any price"},
  }));
  CAPTURE(text);
  CHECK_THROWS_WITH(read_money(text, eur, here), Contains(said));
  CHECK_THROWS_WITH(currency("euro", here), Contains("ISO 4217"));
}

TEST_CASE("a thousand dinars is not read as one", "[units]") {
  // A dinar of Kuwait has a thousand fils (ISO 4217), so "1,000" may be either.
  const Currency dinar = currency("KWD", here);
  CHECK_THROWS_WITH(read_money("1,000", dinar, here), Contains("may mean thousands or decimals"));
  CHECK(read_money("1.000", dinar, here).coins == 1'000);
  CHECK(read_money("0,250", dinar, here).coins == 250);
}

TEST_CASE("shares of a sum add up to the sum", "[units][law]") {
  rc::prop("split loses no coin", [] {
    const Money sum{*rc::gen::inRange(0, 10'000'000), eur};
    const auto weights = *rc::gen::nonEmpty(rc::gen::container<std::vector<double>>(
        rc::gen::map(rc::gen::inRange(1, 1000), [](int w) { return w / 7.0; })));
    const auto parts = split(sum, weights);
    const auto total = std::accumulate(parts.begin(), parts.end(), std::int64_t{0},
                                       [](std::int64_t t, const Money& m) { return t + m.coins; });
    RC_ASSERT(total == sum.coins);
  });
}
