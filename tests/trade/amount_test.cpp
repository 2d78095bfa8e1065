#include "trade/amount.h"

#include "units/user_error.h"

#include <catch2/catch.hpp>

using namespace brimwright;
using trade::Amount;

TEST_CASE("a need is rounded up to the microgram and a pack down", "[trade]") {
  CHECK(Amount::at_least(5 * kilogram).whole() == 5'000'000'000);
  CHECK(Amount::at_most(5 * kilogram).whole() == 5'000'000'000);
  CHECK(Amount::at_least(gram / 3).whole() == 333'334);
  CHECK(Amount::at_most(gram / 3).whole() == 333'333);
  CHECK(Amount::at_least(0 * gram).whole() == 0);
}

TEST_CASE("two packs of 8 oz are 16 oz", "[trade]") {
  // The avoirdupois pound is 453.59237 g exactly (NIST SP 811, appendix B.8).
  CHECK(Amount::at_most(8 * ounce).times(2) == Amount::at_least(pound));
  CHECK(Amount::at_least(pound).whole() == 453'592'370);
}

TEST_CASE("what is missing is never below nothing", "[trade]") {
  CHECK(Amount::pieces(48).less(Amount::pieces(12)).whole() == 36);
  CHECK(Amount::pieces(12).less(Amount::pieces(48)).whole() == 0);
}

TEST_CASE("amounts beyond any studio are refused", "[trade]") {
  CHECK_THROWS_AS(Amount::at_least(1e7 * kilogram), UserError);
  CHECK_THROWS_AS(Amount::at_least(Mass::from_base(std::nan(""))), UserError);
  CHECK_THROWS_AS(Amount::pieces(-1), UserError);
  CHECK_THROWS_AS(Amount::at_most(900'000 * kilogram).times(1'000'000'000), UserError);
}
