#pragma once

#include "units/user_error.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright {

/// An ISO 4217 currency: its code and how many decimals its smallest coin has.
struct Currency {
  std::string code;
  int decimals = 2;
  bool operator==(const Currency&) const = default;
};

/// A currency by its ISO 4217 code; throws UserError at `where` for a code this program does not
/// hold.
Currency currency(std::string_view code, const Place& where);

/// A sum of money: a whole number of the currency's smallest coin.
struct Money {
  std::int64_t coins = 0;
  Currency currency;
  bool operator==(const Money&) const = default;
};

/// "32.50" or "32,50" as money; more decimals than the currency has are refused, never rounded.
Money read_money(std::string_view text, const Currency& currency, const Place& where);
/// "32.50", without the code.
std::string amount_text(const Money& money);

/// `part` of `sum`, to the coin, halves away from zero: the one place where money is rounded.
Money scaled(const Money& sum, double part);
Money operator+(const Money& a, const Money& b);  ///< both of one currency

/// Splits `sum` by `weights` so that the parts add up to it exactly (largest remainders get the odd
/// coins). At least one weight must be positive.
std::vector<Money> split(const Money& sum, const std::vector<double>& weights);

}  // namespace brimwright
