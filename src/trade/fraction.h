#pragma once

#include "units/money.h"
#include "units/share.h"

#include <boost/multiprecision/cpp_int.hpp>

#include <cstdint>

namespace brimwright::trade {

/// An exact number: sums, products and quotients of money lose nothing before they are printed.
using Fraction = boost::multiprecision::cpp_rational;

/// A share as it was typed: the shortest decimal that gives the same share, so that "35 %" is
/// 35/100 and not the binary number next to it.
Fraction exact(const Share& share);
/// A decimal number as it was typed: the shortest one that reads as the same double.
Fraction exact(double number);

/// An amount of money between coins, in coins.
struct ExactMoney {
  Fraction coins = 0;
  Currency currency;
};

ExactMoney exact(const Money& money);

enum class ToCoin { nearest, up };
/// The only way to print it: halves away from zero, or always up. UserError where it is more than
/// any price: 10^15 coins.
Money to_coin(const ExactMoney& money, ToCoin towards, const Place& where);

/// So many of it, as money is often wanted: `n` pieces at this price.
ExactMoney operator*(const Fraction& factor, const ExactMoney& money);
/// Both of one currency.
ExactMoney operator+(const ExactMoney& a, const ExactMoney& b);
ExactMoney operator-(const ExactMoney& a, const ExactMoney& b);

}  // namespace brimwright::trade
