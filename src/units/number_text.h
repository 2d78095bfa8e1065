#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright {

// The one place where a number with decimals is read or written: never by the locale, and the same
// value gives the same bytes.

/// What a text begins with.
struct LeadingNumber {
  double value;
  std::size_t length;  // of its characters
};
/// "12.5e1 mm" as 125, six characters long; no blank and no plus before it. Nothing where there is
/// no number, or one that a double cannot hold.
std::optional<LeadingNumber> leading_number(std::string_view text);
/// The same where all of `text` is the number.
std::optional<double> number_of(std::string_view text);

/// Exactly `decimals` digits after the point.
std::string fixed_text(double value, int decimals);
/// The shortest text that reads back as the same double.
std::string shortest_text(double value);

}  // namespace brimwright
