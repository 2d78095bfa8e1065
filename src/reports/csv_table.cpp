#include "reports/csv_table.h"

#include <algorithm>
#include <string_view>

namespace brimwright::reports {
namespace {

std::string text_cell(std::string text, char between) {
  constexpr std::string_view formula_begins = "=+-@\t\r";
  if (!text.empty() && formula_begins.find(text.front()) != std::string_view::npos)
    text.insert(0, 1, '\'');
  const bool is_plain =
      text.find_first_of("\"\r\n") == std::string::npos && text.find(between) == std::string::npos;
  if (is_plain) return text;
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

}  // namespace

void CsvTable::row(const std::vector<CsvCell>& cells) {
  const char between = mark_ == DecimalMark::comma ? ';' : ',';
  for (const CsvCell& cell : cells) {
    if (&cell != &cells.front()) text_ += between;
    std::string text = cell.is_number ? cell.text : text_cell(cell.text, between);
    if (cell.is_number && mark_ == DecimalMark::comma)
      std::replace(text.begin(), text.end(), '.', ',');
    text_ += text;
  }
  text_ += "\r\n";
}

}  // namespace brimwright::reports
