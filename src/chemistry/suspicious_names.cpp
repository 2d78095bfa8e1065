#include "chemistry/suspicious_names.h"

#include "chemistry/name_words.h"
#include "units/letters.h"

#include <algorithm>
#include <array>
#include <string>

namespace brimwright::chemistry {
namespace {

bool has(const std::string& name, std::string_view part) {
  return name.find(part) != std::string::npos;
}

template <std::size_t N>
bool has_any(const std::string& name, const std::array<std::string_view, N>& parts) {
  return std::any_of(parts.begin(), parts.end(), [&](std::string_view p) { return has(name, p); });
}

/// Fatty acids in German, French, Spanish and Italian.
const PhraseBook& fatty_acids_abroad() {
  static const PhraseBook names = [] {
    PhraseBook book;
    for (const std::string_view name :
         {"Stearinsäure*",    "Palmitinsäure*",  "Myristinsäure*",   "Laurinsäure*",
          "Ölsäure*",         "Linolsäure*",     "Fettsäure*",       "acide stéarique",
          "acide palmitique", "acide laurique",  "acide myristique", "acide oléique",
          "acide gras",       "acides gras",     "ácido esteárico",  "ácido palmítico",
          "ácido láurico",    "ácido mirístico", "ácido oleico",     "ácido graso",
          "ácidos grasos",    "acido stearico",  "acido palmitico",  "acido laurico",
          "acido miristico",  "acido grasso",    "acidi grassi"})
      book.add(name, 0);
    return book;
  }();
  return names;
}

}  // namespace

bool names_a_fatty_acid(std::string_view given) {
  constexpr std::array<std::string_view, 6> fatty = {
      "stearic acid", "palmitic acid", "myristic acid", "lauric acid", "oleic acid", "fatty acid"};
  return has_any(in_small_letters(std::string(given)), fatty) ||
         !fatty_acids_abroad().hits(words_of(given)).empty();
}

bool names_something_fatty(std::string_view given) {
  constexpr std::array<std::string_view, 9> fatty = {
      "milk", "butter", "cream", "yogurt", "yoghurt", "kefir", "ghee", "tallow", "yolk"};
  const std::string name = in_small_letters(std::string(given));
  if (has(name, "cream of tartar")) return false;
  if (has(name, "essential oil") || has(name, "fragrance oil")) return false;
  return has_words(name, "oil") || has_words(name, "lard") || has_any(name, fatty);
}

}  // namespace brimwright::chemistry
