#pragma once

#include <string>
#include <vector>

namespace brimwright::reports {

/// How wide a line of text for people may be.
inline constexpr std::size_t page_width = 80;

/// Columns shown by `text`, counted as characters, not bytes.
std::size_t shown_width(const std::string& text);

/// `text` broken at blanks into lines of at most page_width, each begun with `first` or, after the
/// first, `next`. Ends with a line break.
std::string wrapped(const std::string& text, const std::string& first, const std::string& next);

/// `text` broken at blanks into lines of at most `width`, the later ones two narrower for their
/// indent; a word longer than that keeps a line of its own.
std::vector<std::string> broken(const std::string& text, std::size_t width);

/// Rows set in aligned columns. A first column that would push the table over page_width is broken
/// at blanks into further lines.
class TextTable {
 public:
  enum class Side { left, right };
  explicit TextTable(std::vector<Side> sides) : sides_(std::move(sides)) {}

  void row(std::vector<std::string> cells);  ///< as many cells as there are sides, or fewer
  void rule();                               ///< a line under what stands above
  std::string text() const;                  ///< each line indented by two blanks

 private:
  std::vector<std::size_t> column_widths() const;

  std::vector<Side> sides_;
  std::vector<std::vector<std::string>> rows_;  // an empty row is a rule
};

}  // namespace brimwright::reports
