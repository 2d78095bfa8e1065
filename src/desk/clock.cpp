#include "desk/clock.h"

#include <array>
#include <cstdlib>
#include <string_view>

namespace brimwright::desk {
namespace {

std::string two_digits(long number) {
  return {static_cast<char>('0' + number / 10 % 10), static_cast<char>('0' + number % 10)};
}

}  // namespace

std::string moment_in_words(std::time_t moment) {
  std::tm there{};
  std::array<char, 32> text{};
  if (::localtime_r(&moment, &there) == nullptr ||
      std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%S", &there) == 0)
    return "1970-01-01T00:00:00+00:00";  // a time that no calendar has
  const long minutes = std::abs(there.tm_gmtoff) / 60;
  return text.data() + std::string(there.tm_gmtoff < 0 ? "-" : "+") + two_digits(minutes / 60) +
         ":" + two_digits(minutes % 60);
}

std::string now_in_words() { return moment_in_words(std::time(nullptr)); }

bool is_moment(const std::string& text) {
  constexpr std::string_view form = "0000-00-00T00:00:00+00:00";
  if (text.size() != form.size()) return false;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const bool is_digit = text[i] >= '0' && text[i] <= '9';
    const bool fits = form[i] == '0'   ? is_digit
                      : form[i] == '+' ? text[i] == '+' || text[i] == '-'
                                       : text[i] == form[i];
    if (!fits) return false;
  }
  return true;
}

}  // namespace brimwright::desk
