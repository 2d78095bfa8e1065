#include "units/money.h"

#include "units/rounding.h"
#include "units/written_number.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <optional>

namespace brimwright {
namespace {

// ISO 4217, list one as published on 2024-06-25: currencies by the decimals of their smallest coin.
// Funds, metals and codes without a smallest coin are left out.
constexpr std::array<std::string_view, 4> codes_by_decimals = {
    "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF", "",
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD "
    "CAD CDF CHF CNY COP CRC CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP "
    "GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL "
    "MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK "
    "PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB "
    "TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD YER ZAR ZMW ZWG",
    "BHD IQD JOD KWD LYD OMR TND"};

std::optional<int> decimals_of(std::string_view code) {
  const bool is_code = code.size() == 3 && std::all_of(code.begin(), code.end(),
                                                       [](char c) { return c >= 'A' && c <= 'Z'; });
  if (!is_code) return std::nullopt;
  for (std::size_t decimals = 0; decimals < codes_by_decimals.size(); ++decimals)
    if (codes_by_decimals[decimals].find(code) != std::string_view::npos)
      return static_cast<int>(decimals);
  return std::nullopt;
}

std::int64_t coins_in_one(const Currency& currency) {
  std::int64_t coins = 1;
  for (int i = 0; i < currency.decimals; ++i) coins *= 10;
  return coins;
}

bool is_digits(std::string_view text) {
  return !text.empty() &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::int64_t whole_of(std::string_view digits) {
  return std::accumulate(digits.begin(), digits.end(), std::int64_t{0},
                         [](std::int64_t sum, char c) { return sum * 10 + (c - '0'); });
}

}  // namespace

Currency currency(std::string_view code, const Place& where) {
  const auto decimals = decimals_of(code);
  if (!decimals)
    throw UserError(where, quoted(code) + " is not a currency code known here",
                    "give the three-letter ISO 4217 code, such as \"EUR\" or \"USD\"");
  return {std::string(code), *decimals};
}

Money read_money(std::string_view text, const Currency& currency, const Place& where) {
  const std::string shown = quoted(text);
  if (text.size() > 1 && text[0] == '-' && text[1] >= '0' && text[1] <= '9')
    throw UserError(where, shown + " is negative",
                    "write what is paid or asked, such as \"12.50\"");
  if (text.size() > 1 && (text[0] == '.' || text[0] == ',') && is_digits(text.substr(1)))
    throw UserError(where, shown + " has no figure before its point",
                    "write \"0." + std::string(text.substr(1)) + "\", if that is meant");
  if (is_digits(text) && text.size() > 9)
    throw UserError(where, shown + " is more than any price", "look for a point that is lost");
  const auto mark = text.find_first_of(".,");
  const std::string_view units = text.substr(0, mark);
  const std::string_view rest = mark == std::string_view::npos ? "" : text.substr(mark + 1);
  const bool is_amount =
      is_digits(units) && (mark == std::string_view::npos || is_digits(rest)) && units.size() <= 9;
  if (!is_amount)
    throw UserError(where, shown + " is no amount of money",
                    "write a plain decimal number without the currency, such as \"12.50\"");
  // With coins of a thousandth it may be either.
  if (mark != std::string_view::npos && text[mark] == ',' && rest.size() == 3 && units != "0" &&
      units.size() <= 3)
    throw UserError(where, shown + " may mean thousands or decimals",
                    "write the amount without a thousands mark and with a decimal point");
  if (static_cast<int>(rest.size()) > currency.decimals)
    throw UserError(
        where, shown + " has smaller coins than " + currency.code + " knows",
        "give at most " + std::to_string(currency.decimals) + " digits after the point");
  std::string coins(rest);
  coins.resize(static_cast<std::size_t>(currency.decimals), '0');
  return {whole_of(units) * coins_in_one(currency) + whole_of(coins), currency};
}

std::string amount_text(const Money& money) {
  const std::int64_t one = coins_in_one(money.currency);
  const std::int64_t size = std::abs(money.coins);
  std::string text = (money.coins < 0 ? "-" : "") + std::to_string(size / one);
  if (money.currency.decimals == 0) return text;
  std::string coins = std::to_string(size % one);
  coins.insert(0, static_cast<std::size_t>(money.currency.decimals) - coins.size(), '0');
  return text + "." + coins;
}

Money scaled(const Money& sum, double part) {
  return {whole_nearest(static_cast<double>(sum.coins) * part), sum.currency};
}

Money operator+(const Money& a, const Money& b) {
  assert(a.currency == b.currency);
  return {a.coins + b.coins, a.currency};
}

std::vector<Money> split(const Money& sum, const std::vector<double>& weights) {
  const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
  assert(total > 0);
  std::vector<Money> parts;
  std::vector<std::pair<double, std::size_t>> remainders;
  std::int64_t left = sum.coins;
  for (std::size_t i = 0; i < weights.size(); ++i) {
    const double ideal = static_cast<double>(sum.coins) * weights[i] / total;
    const auto coins = static_cast<std::int64_t>(std::floor(ideal));
    parts.push_back({coins, sum.currency});
    remainders.emplace_back(ideal - static_cast<double>(coins), i);
    left -= coins;
  }
  std::stable_sort(remainders.begin(), remainders.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  for (std::size_t i = 0; left > 0; ++i, --left) ++parts[remainders[i % parts.size()].second].coins;
  return parts;
}

}  // namespace brimwright
