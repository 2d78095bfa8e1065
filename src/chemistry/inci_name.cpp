#include "chemistry/inci_name.h"

#include <array>
#include <utility>

namespace brimwright::chemistry {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 4> greek = {
    {{"\u03b1", "alpha"}, {"\u03b2", "beta"}, {"\u03b3", "gamma"}, {"\u03b4", "delta"}}};

/// "(Palm)" at the front of `text`; empty where no bracket opens there or none closes it.
std::string_view bracketed(std::string_view text) {
  if (!text.starts_with('(')) return {};
  const auto end = text.find(')');
  return end == std::string_view::npos ? std::string_view{} : text.substr(0, end + 1);
}

std::string key_of(std::string_view name, bool with_brackets) {
  std::string key;
  while (!name.empty()) {
    std::size_t taken = with_brackets ? 0 : bracketed(name).size();
    for (const auto& [letter, word] : greek)
      if (taken == 0 && name.starts_with(letter)) {
        key += word;
        taken = letter.size();
      }
    if (taken == 0) {
      const char c = name.front();
      if (c != ' ' && c != '-') key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
      taken = 1;
    }
    name.remove_prefix(taken);
  }
  return key;
}

}  // namespace

std::string inci_key(std::string_view name) {
  const std::string key = key_of(name, false);
  return key.empty() ? key_of(name, true) : key;  // all of it in brackets
}

}  // namespace brimwright::chemistry
