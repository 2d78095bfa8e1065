#include "units/letters.h"

namespace brimwright {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

std::string in_small_letters(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

bool has_words(std::string_view text, std::string_view words) {
  for (auto at = text.find(words); at != text.npos; at = text.find(words, at + 1)) {
    const auto end = at + words.size();
    const bool begins = at == 0 || !is_letter(text[at - 1]);
    const bool ends = end == text.size() || !is_letter(text[end]);
    if (begins && ends) return true;
  }
  return false;
}

}  // namespace brimwright
