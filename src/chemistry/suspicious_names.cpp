#include "chemistry/suspicious_names.h"

#include <algorithm>
#include <array>
#include <string>

namespace brimwright::chemistry {
namespace {

std::string lower(std::string_view name) {
  std::string out(name);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

bool has(const std::string& name, std::string_view part) {
  return name.find(part) != std::string::npos;
}

template <std::size_t N>
bool has_any(const std::string& name, const std::array<std::string_view, N>& parts) {
  return std::any_of(parts.begin(), parts.end(), [&](std::string_view p) { return has(name, p); });
}

bool is_letter(char c) { return c >= 'a' && c <= 'z'; }

/// `word` standing by itself: "oil" in "olive oil", not in "soil".
bool has_word(const std::string& name, std::string_view word) {
  for (auto at = name.find(word); at != std::string::npos; at = name.find(word, at + 1)) {
    const auto end = at + word.size();
    const bool begins = at == 0 || !is_letter(name[at - 1]);
    const bool ends = end == name.size() || !is_letter(name[end]);
    if (begins && ends) return true;
  }
  return false;
}

bool is_citrus_juice(const std::string& name) {
  constexpr std::array<std::string_view, 5> citrus = {"citrus", "grapefruit", "lemon", "lime",
                                                      "orange"};
  return has_word(name, "juice") && has_any(name, citrus);
}

}  // namespace

bool names_a_fatty_acid(std::string_view given) {
  constexpr std::array<std::string_view, 6> fatty = {
      "stearic acid", "palmitic acid", "myristic acid", "lauric acid", "oleic acid", "fatty acid"};
  return has_any(lower(given), fatty);
}

bool names_an_acid(std::string_view given) {
  constexpr std::array<std::string_view, 9> acids = {"citric",   "lactic",          "acetic",
                                                     "ascorbic", "malic",           "tartaric",
                                                     "vinegar",  "cream of tartar", "vitamin c"};
  const std::string name = lower(given);
  return has_word(name, "acid") || has_any(name, acids) || is_citrus_juice(name);
}

bool names_something_fatty(std::string_view given) {
  constexpr std::array<std::string_view, 9> fatty = {
      "milk", "butter", "cream", "yogurt", "yoghurt", "kefir", "ghee", "tallow", "yolk"};
  const std::string name = lower(given);
  if (has(name, "cream of tartar")) return false;
  if (has(name, "essential oil") || has(name, "fragrance oil")) return false;
  return has_word(name, "oil") || has_word(name, "lard") || has_any(name, fatty);
}

}  // namespace brimwright::chemistry
