#include "geometry/files/text_lines.h"

#include "units/number_text.h"
#include "units/user_error.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr std::string_view blanks = " \t\r\v\f";

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t count_digits(std::string_view text) {
  std::size_t digits = 0;
  while (digits < text.size() && is_digit(text[digits])) ++digits;
  return digits;
}

/// What may be printed of a word in a complaint.
std::string quoted(std::string_view word) {
  constexpr std::size_t longest = 20;
  std::string text = "\"";
  for (const char c : word.substr(0, longest)) text += c > ' ' && c < '\x7f' ? c : '?';
  return text + (word.size() > longest ? "...\"" : "\"");
}

}  // namespace

std::optional<double> plain_number(std::string_view word) {
  if (word.starts_with('+')) word.remove_prefix(1);
  std::string_view rest = word.substr(word.starts_with('-') ? 1 : 0);
  const std::size_t before = count_digits(rest);
  if (before > 18) return std::nullopt;  // which Assimp counts wrong: they overflow 64 bits
  rest.remove_prefix(before);
  std::size_t after = 0;
  if (rest.starts_with('.')) {
    after = count_digits(rest.substr(1));
    rest.remove_prefix(1 + after);
  }
  if (before + after == 0) return std::nullopt;
  if (rest.starts_with('e') || rest.starts_with('E')) {
    rest.remove_prefix(1);
    if (rest.starts_with('-') || rest.starts_with('+')) rest.remove_prefix(1);
    const std::size_t exponent = count_digits(rest);
    if (exponent == 0 || exponent > 3) return std::nullopt;
    rest.remove_prefix(exponent);
  }
  if (!rest.empty()) return std::nullopt;
  const auto number = leading_number(word);
  if (!number || std::abs(number->value) > std::numeric_limits<float>::max()) return std::nullopt;
  return number->value;
}

std::optional<std::int64_t> whole_number(std::string_view word) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
  if (error != std::errc() || end != word.data() + word.size()) return std::nullopt;
  return number;
}

TextLines::TextLines(std::string_view text, std::string kind, const std::string& file, char comment)
    : text_(text), kind_(std::move(kind)), file_(file), comment_(comment) {}

bool TextLines::next_line() {
  while (!text_.empty()) {
    const std::size_t end = text_.find('\n');
    line_ = text_.substr(0, end);
    text_.remove_prefix(end == std::string_view::npos ? text_.size() : end + 1);
    ++number_;
    if (comment_ != '\0') line_ = line_.substr(0, line_.find(comment_));
    if (line_.find_first_not_of(blanks) != std::string_view::npos) return true;
  }
  line_ = {};
  return false;
}

std::string_view TextLines::word() {
  const std::size_t start = line_.find_first_not_of(blanks);
  if (start == std::string_view::npos) {
    line_ = {};
    return {};
  }
  const std::size_t end = std::min(line_.find_first_of(blanks, start), line_.size());
  const std::string_view word = line_.substr(start, end - start);
  line_.remove_prefix(end);
  return word;
}

std::string_view TextLines::word_anywhere() {
  std::string_view found = word();
  while (found.empty() && next_line()) found = word();
  return found;
}

double TextLines::number(std::string_view word) const {
  const std::optional<double> number = plain_number(word);
  if (number) return *number;
  if (word.empty()) refuse("lacks a number");
  if (word.find(',') != std::string_view::npos)
    refuse("has " + quoted(word) + ", where numbers are written with a decimal point");
  refuse("has " + quoted(word) + ", which is not a number for a mould");
}

std::size_t TextLines::index(std::string_view word, std::size_t end) const {
  const std::optional<std::int64_t> number = whole_number(word);
  if (number && *number >= 0 && static_cast<std::size_t>(*number) < end)
    return static_cast<std::size_t>(*number);
  if (word.empty()) refuse("lacks a number");
  refuse("has " + quoted(word) + ", where whole numbers from 0 to " + std::to_string(end - 1) +
         " belong");
}

void TextLines::refuse(const std::string& problem) const {
  throw UserError({.file = file_,
                   .field = "line " + std::to_string(number_),
                   .problem = "is not a sound " + kind_ + " file: " + problem,
                   .remedy = "export it again, or as a binary STL"});
}

}  // namespace brimwright::geometry
