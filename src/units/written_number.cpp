#include "units/written_number.h"

#include "units/letters.h"
#include "units/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace brimwright {
namespace {

double value_of(std::string_view plain_number) {
  return number_of(plain_number).value_or(std::nan(""));
}

[[noreturn]] void refuse_number(std::string_view whole_text, const Place& where,
                                const std::string& example) {
  throw UserError(where, quoted(whole_text) + " does not begin with a number",
                  "write a number and its unit, such as " + example);
}

/// "1,500" may be one and a half or fifteen hundred; "1,5" and "0,250" can only be decimals.
bool is_ambiguous(std::string_view units, char mark, std::string_view decimals) {
  return mark == ',' && decimals.size() == 3 && units != "0" && units.size() <= 3;
}

/// "/4" of "3/4" after `over` was taken; the quotient, or nothing if no fraction stands there.
std::optional<double> fraction_of(Text& text, std::string_view over) {
  if (text.rest.empty() || text.rest.front() != '/') return std::nullopt;
  text.rest.remove_prefix(1);
  const auto under = text.digits();
  return under.empty() ? std::nan("") : value_of(over) / value_of(under);
}

/// The 1/4 of "2 1/4", or of "2-1/4" with no blank before its hyphen, in front of `text`.
std::optional<double> fraction_beside(Text& text) {
  Text ahead = text;
  if (!ahead.rest.empty() && ahead.rest.front() == '-') ahead.rest.remove_prefix(1);
  ahead.skip_blanks();
  const auto over = ahead.digits();
  if (over.empty()) return std::nullopt;
  const auto quotient = fraction_of(ahead, over);
  if (quotient) text = ahead;
  return quotient;
}

}  // namespace

std::string_view without_blanks(std::string_view text) {
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  return text;
}

std::string plain(std::string_view text) {
  struct Swap {
    std::string_view from, to;
  };
  constexpr std::array swaps = {
      Swap{"\u00a0", " "},    Swap{"\u202f", " "},  Swap{"\u2009", " "},    Swap{"\u2033", "\""},
      Swap{"\u201c", "\""},   Swap{"\u201d", "\""}, Swap{"\u00bd", " 1/2"}, Swap{"\u00bc", " 1/4"},
      Swap{"\u00be", " 3/4"}, Swap{"\u2212", "-"},  Swap{"\u2011", "-"},    Swap{"\u2013", "-"}};
  // After a letter alone: "cm²" is a unit, but "5²" is not 52.
  constexpr std::array powers = {Swap{"\u00b2", "2"}, Swap{"\u00b3", "3"}};
  const auto is_ascii = [](char c) { return static_cast<unsigned char>(c) < 0x80; };
  std::string out;
  if (std::all_of(text.begin(), text.end(), is_ascii)) out = text;
  for (std::size_t at = out.size(); at < text.size();) {
    if (is_ascii(text[at])) {  // all that is swapped begins beyond it
      out += text[at++];
      continue;
    }
    const auto stands_here = [&](const Swap& swap) {
      return text.substr(at, swap.from.size()) == swap.from;
    };
    const Swap* swap = std::find_if(swaps.begin(), swaps.end(), stands_here);
    if (swap == swaps.end() && !out.empty() && is_letter(out.back())) {
      const Swap* power = std::find_if(powers.begin(), powers.end(), stands_here);
      if (power != powers.end()) swap = power;
    }
    const bool is_swap = swap != swaps.end();
    out += is_swap ? swap->to : text.substr(at, 1);
    at += is_swap ? swap->from.size() : 1;
  }
  const std::string_view bare = without_blanks(out);
  // Copied from a file or an example together with its quotes; one alone is an inch.
  const bool is_in_quotes = bare.size() > 1 && bare.front() == '"' && bare.back() == '"';
  return std::string(is_in_quotes ? without_blanks(bare.substr(1, bare.size() - 2)) : bare);
}

namespace {

double taken_number(Text& text, std::string_view whole_text, const Place& where,
                    const std::string& example) {
  if (!text.rest.empty() && text.rest.front() == '-')
    throw UserError(where, quoted(whole_text) + " is negative",
                    "give 0 or more, such as " + example);
  if (!text.rest.empty() && text.rest.front() == '+') text.rest.remove_prefix(1);
  const auto units = text.digits();
  if (auto quotient = fraction_of(text, units)) {
    if (units.empty() || !std::isfinite(*quotient)) refuse_number(whole_text, where, example);
    return *quotient;
  }
  const bool has_mark =
      !text.rest.empty() && (text.rest.front() == '.' || text.rest.front() == ',');
  if (has_mark) {
    const char mark = text.rest.front();
    text.rest.remove_prefix(1);
    const auto decimals = text.digits();
    const bool another_mark =
        !text.rest.empty() && (text.rest.front() == '.' || text.rest.front() == ',');
    if (another_mark || is_ambiguous(units, mark, decimals))
      throw UserError(where, quoted(whole_text) + " may mean thousands or decimals",
                      "write the number without a thousands mark and with a decimal point");
    if (decimals.empty()) refuse_number(whole_text, where, example);
    return value_of((units.empty() ? "0" : std::string(units)) + "." + std::string(decimals));
  }
  if (units.empty()) refuse_number(whole_text, where, example);
  const double value = value_of(units);
  const auto beside = fraction_beside(text);
  if (!beside) return value;
  if (!std::isfinite(*beside) || *beside >= 1) refuse_number(whole_text, where, example);
  return value + *beside;
}

}  // namespace

double take_number(Text& text, std::string_view whole_text, const Place& where,
                   const std::string& example) {
  const double number = taken_number(text, whole_text, where, example);
  // Hundreds of digits; what is not a number passes every comparison with a bound.
  if (!std::isfinite(number))
    throw UserError(where, quoted(whole_text) + " holds a number that is too long",
                    "write it with fewer digits, such as " + example);
  return number;
}

}  // namespace brimwright
