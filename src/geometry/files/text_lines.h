#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// A number as mesh files write them and Assimp reads them right: a sign, at most 18 digits before
/// the point, some after it, and an exponent; within single precision. "nan", "0x3C", "1,5" and
/// "60mm" are none.
std::optional<double> plain_number(std::string_view word);
/// Digits alone, with a minus at most.
std::optional<std::int64_t> whole_number(std::string_view word);

/// The words of a text mesh, line by line, with the wording of what is wrong with them.
class TextLines {
 public:
  /// `kind` names the format, as "STL"; `comment` begins a comment to the line's end, if any does.
  TextLines(std::string_view text, std::string kind, const std::string& file, char comment = '\0');

  /// Goes to the next line that has a word; false at the end of the text.
  bool next_line();
  /// The line's next word; empty at its end.
  std::string_view word();
  /// The next word, of this line or a later one; empty at the end of the text.
  std::string_view word_anywhere();
  void skip_line() { line_ = {}; }

  /// The word as a number; UserError with the line if it is none.
  double number(std::string_view word) const;
  /// The word as a whole number from 0 to below `end`; UserError with the line if it is none.
  std::size_t index(std::string_view word, std::size_t end) const;
  [[noreturn]] void refuse(const std::string& problem) const;

 private:
  std::string_view text_;
  std::string_view line_;
  std::size_t number_ = 0;  // of the line, from 1
  std::string kind_;
  const std::string& file_;
  char comment_;
};

}  // namespace brimwright::geometry
