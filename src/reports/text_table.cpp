#include "reports/text_table.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

constexpr std::size_t least_first_column = 16;

std::string set(const std::string& cell, std::size_t width, TextTable::Side side) {
  const std::string blanks(width > shown_width(cell) ? width - shown_width(cell) : 0, ' ');
  return side == TextTable::Side::left ? cell + blanks : blanks + cell;
}

}  // namespace

std::vector<std::string> broken(const std::string& text, std::size_t width) {
  if (shown_width(text) <= width) return {text};
  std::vector<std::string> lines(1);
  std::size_t at = 0;
  while (at < text.size()) {
    const auto end = std::min(text.find(' ', at + 1), text.size());
    const std::string word = text.substr(at, end - at);
    const std::size_t room = lines.size() == 1 ? width : width - 2;
    if (!lines.back().empty() && shown_width(lines.back() + word) > room)
      lines.push_back(word.substr(1));
    else
      lines.back() += word;
    at = end;
  }
  return lines;
}

std::size_t shown_width(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;  // not a UTF-8 continuation
  }));
}

std::string wrapped(const std::string& text, const std::string& first, const std::string& next) {
  std::string out, line = first;
  bool is_fresh = true;
  std::size_t at = 0;
  while (at < text.size()) {
    const auto end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    at = end + 1;
    if (word.empty()) continue;
    if (!is_fresh && shown_width(line) + 1 + shown_width(word) > page_width) {
      out += line + "\n";
      line = next;
      is_fresh = true;
    }
    line += (is_fresh ? "" : " ") + word;
    is_fresh = false;
  }
  return out + line + "\n";
}

void TextTable::row(std::vector<std::string> cells) {
  cells.resize(sides_.size());
  rows_.push_back(std::move(cells));
}

void TextTable::rule() { rows_.emplace_back(); }

std::vector<std::size_t> TextTable::column_widths() const {
  std::vector<std::size_t> widths(sides_.size(), 0);
  for (const auto& cells : rows_)
    for (std::size_t i = 0; i < cells.size(); ++i)
      widths[i] = std::max(widths[i], shown_width(cells[i]));
  std::size_t others = 2 * widths.size();
  for (std::size_t i = 1; i < widths.size(); ++i) others += widths[i];
  const std::size_t left = others < page_width ? page_width - others : 0;
  widths[0] = std::min(widths[0], std::max(left, least_first_column));
  return widths;
}

std::string TextTable::text() const {
  const auto widths = column_widths();
  std::size_t whole = 2 * (widths.size() - 1);
  for (const auto width : widths) whole += width;

  std::string out;
  for (const auto& cells : rows_) {
    if (cells.empty()) {
      out += "  " + std::string(whole, '-') + "\n";
      continue;
    }
    const auto lines = broken(cells[0], widths[0]);
    std::string line = "  " + set(lines[0], widths[0], sides_[0]);
    for (std::size_t i = 1; i < cells.size(); ++i)
      line += "  " + set(cells[i], widths[i], sides_[i]);
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + "\n";
    for (std::size_t i = 1; i < lines.size(); ++i) out += "    " + lines[i] + "\n";
  }
  return out;
}

}  // namespace brimwright::reports
