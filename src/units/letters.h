#pragma once

#include <string>
#include <string_view>

namespace brimwright {

// Letters of ASCII alone, whatever the locale; other bytes are no letters and stay as they are.

bool is_letter(char c);
std::string in_small_letters(std::string text);

/// Whether `words` stands in `text` by itself: "salt" in "sea salt", not in "salted".
bool has_words(std::string_view text, std::string_view words);

}  // namespace brimwright
