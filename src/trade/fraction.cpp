#include "trade/fraction.h"

#include <array>
#include <cassert>
#include <charconv>
#include <string_view>

namespace brimwright::trade {
namespace {

using Whole = boost::multiprecision::cpp_int;

Whole power_of_ten(int exponent) {
  return boost::multiprecision::pow(Whole(10), static_cast<unsigned>(exponent));
}

/// Of a fraction that is not negative.
Whole rounded(const Fraction& number, ToCoin towards) {
  const Whole over = boost::multiprecision::numerator(number);
  const Whole under = boost::multiprecision::denominator(number);
  if (towards == ToCoin::up) return (over + under - 1) / under;
  return (2 * over + under) / (2 * under);
}

}  // namespace

Fraction exact(double number) {
  std::array<char, 64> text{};
  const auto end =
      std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::scientific);
  const std::string_view written(text.data(), static_cast<std::size_t>(end.ptr - text.data()));
  const auto mark = written.find('e');
  assert(mark != written.npos);  // it is finite
  std::string digits;
  int decimals = 0;
  for (std::size_t i = 0, point = written.find('.'); i < mark; ++i) {
    if (i == point) continue;
    digits += written[i];
    if (point != written.npos && i > point) ++decimals;
  }
  int exponent = 0;
  const char* first = written.data() + mark + 1;
  if (*first == '+') ++first;
  std::from_chars(first, written.data() + written.size(), exponent);
  exponent -= decimals;
  const Fraction whole{Whole(digits)};
  return exponent >= 0 ? Fraction(whole * power_of_ten(exponent))
                       : Fraction(whole / power_of_ten(-exponent));
}

Fraction exact(const Share& share) { return exact(share.of_one()); }

ExactMoney exact(const Money& money) { return {Fraction(money.coins), money.currency}; }

Money to_coin(const ExactMoney& money, ToCoin towards, const Place& where) {
  const bool is_negative = money.coins < 0;
  const Whole size =
      is_negative ? rounded(-money.coins, ToCoin::nearest) : rounded(money.coins, towards);
  if (size > power_of_ten(15))
    throw UserError(where, "comes to more than any price",
                    "check the prices and what they are paid for");
  const auto coins = size.convert_to<std::int64_t>();
  return {is_negative ? -coins : coins, money.currency};
}

ExactMoney operator*(const Fraction& factor, const ExactMoney& money) {
  return {factor * money.coins, money.currency};
}
ExactMoney operator+(const ExactMoney& a, const ExactMoney& b) {
  assert(a.currency == b.currency);
  return {a.coins + b.coins, a.currency};
}
ExactMoney operator-(const ExactMoney& a, const ExactMoney& b) {
  assert(a.currency == b.currency);
  return {a.coins - b.coins, a.currency};
}

}  // namespace brimwright::trade
