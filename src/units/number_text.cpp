#include "units/number_text.h"

#include <array>
#include <charconv>

namespace brimwright {

std::optional<LeadingNumber> leading_number(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc()) return std::nullopt;
  return LeadingNumber{value, static_cast<std::size_t>(end - text.data())};
}

std::optional<double> number_of(std::string_view text) {
  const auto number = leading_number(text);
  if (!number || number->length != text.size()) return std::nullopt;
  return number->value;
}

std::string fixed_text(double value, int decimals) {
  std::array<char, 400> buffer{};  // the largest double has 309 digits before the point
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                 std::chars_format::fixed, decimals);
  return {buffer.data(), end.ptr};
}

std::string shortest_text(double value) {
  std::array<char, 32> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
  return {buffer.data(), end.ptr};
}

}  // namespace brimwright
