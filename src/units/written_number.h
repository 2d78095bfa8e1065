#pragma once

#include "units/shown_text.h"
#include "units/user_error.h"

#include <string>
#include <string_view>

namespace brimwright {

inline bool is_blank(char c) { return c == ' ' || c == '\t'; }
/// `text` without blanks at its ends.
std::string_view without_blanks(std::string_view text);
/// What was written, in quotes, cut if it is longer than anything that could be meant.
inline std::string quoted(std::string_view text) { return "\"" + shortened(text, 80) + "\""; }

/// What was written without blanks or a pair of quotes at its ends, and with plain ASCII in place
/// of the blanks, fractions and signs that a keyboard or a copied text brings.
std::string plain(std::string_view text);

/// A cursor over one written quantity.
struct Text {
  std::string_view rest;

  void skip_blanks() {
    while (!rest.empty() && is_blank(rest.front())) rest.remove_prefix(1);
  }
  /// Takes the digits in front; empty if there are none.
  std::string_view digits() {
    std::size_t n = 0;
    while (n < rest.size() && rest[n] >= '0' && rest[n] <= '9') ++n;
    const auto taken = rest.substr(0, n);
    rest.remove_prefix(n);
    return taken;
  }
};

/// Takes "12", "0.5", ".5", "1,5", "1/2", "2 1/4" or "2-1/4" from the front of `text`. UserError at
/// `where`, quoting `whole_text`, for a negative number, one whose comma may be a thousands mark,
/// or none.
double take_number(Text& text, std::string_view whole_text, const Place& where,
                   const std::string& example);

}  // namespace brimwright
