#include "reports/drawn_text.h"

#include <algorithm>
#include <string_view>

namespace brimwright::reports {
namespace {

std::size_t count_of_characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

/// The start of `text` that is at least one character and, beyond that, no wider than `width`.
std::string_view that_fits(std::string_view text, double size_mm, double width_mm) {
  std::size_t end = 0;
  do {
    ++end;
    while (end < text.size() && (text[end] & 0xC0) == 0x80) ++end;
  } while (end < text.size() && width_of(std::string(text.substr(0, end + 1)), size_mm) < width_mm);
  return text.substr(0, end);
}

}  // namespace

double width_of(const std::string& text, double size_mm) {
  constexpr double character = 0.56;  // of the size; measured over labels set in common sans serifs
  return character * size_mm * static_cast<double>(count_of_characters(text));
}

std::vector<std::string> broken(const std::string& text, double size_mm, double width_mm) {
  std::vector<std::string> lines;
  std::string line;
  std::string_view rest = text;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    std::string_view word = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (word.empty()) continue;
    const std::string longer = line + (line.empty() ? "" : " ") + std::string(word);
    if (width_of(longer, size_mm) <= width_mm) {
      line = longer;
      continue;
    }
    if (!line.empty()) lines.push_back(std::move(line));
    while (width_of(std::string(word), size_mm) > width_mm && count_of_characters(word) > 1) {
      const std::string_view start = that_fits(word, size_mm, width_mm);
      lines.emplace_back(start);
      word.remove_prefix(start.size());
    }
    line = word;
  }
  if (!line.empty()) lines.push_back(std::move(line));
  return lines;
}

}  // namespace brimwright::reports
