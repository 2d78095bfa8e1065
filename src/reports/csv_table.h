#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::reports {

/// How a spreadsheet writes numbers where it is used: "1.5" between commas, or "1,5" between
/// semicolons.
enum class DecimalMark : std::uint8_t { point, comma };

constexpr DecimalMark mark_of(bool is_comma) {
  return is_comma ? DecimalMark::comma : DecimalMark::point;
}

struct CsvCell {
  std::string text;
  bool is_number = false;  // as a decimal with a point

  static CsvCell number(std::string text) { return {std::move(text), true}; }
};

/// A table after RFC 4180, but for the semicolons of a decimal comma. A text that a spreadsheet
/// would work out is led by an apostrophe; a number stands as it is.
class CsvTable {
 public:
  explicit CsvTable(DecimalMark mark) : mark_(mark) {}

  void row(const std::vector<CsvCell>& cells);
  std::string take() { return std::move(text_); }

 private:
  DecimalMark mark_;
  std::string text_;
};

}  // namespace brimwright::reports
