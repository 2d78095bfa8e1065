#include "reports/csv_table.h"
#include "reports/quote_tables.h"

#include <algorithm>

namespace brimwright::reports {
namespace {

/// "-3.20" stays the number that it is.
bool is_number(const std::string& cell) {
  const auto digits = cell.begin() + (cell.starts_with('-') ? 1 : 0);
  return digits != cell.end() &&
         std::all_of(digits, cell.end(), [](char c) { return (c >= '0' && c <= '9') || c == '.'; });
}

std::string without_indent(const std::string& name) {
  return name.substr(std::min(name.find_first_not_of(' '), name.size()));
}

void add_rows(CsvTable& csv, const QuoteTable& table, const std::string& currency) {
  std::string group;
  for (const auto& [name, cells, is_sum] : table.rows) {
    if (cells.empty() || is_sum) group = cells.empty() ? name : "";
    for (std::size_t i = 0; i < cells.size(); ++i)
      csv.row({{table.title},
               {group},
               {without_indent(name)},
               {table.heads[i + 1]},
               {cells[i], is_number(cells[i])},
               {currency}});
  }
}

template <class Report>
CsvTable csv_of(const Report& report, DecimalMark mark) {
  CsvTable csv(mark);
  csv.row({{"table"}, {"part"}, {"row"}, {"column"}, {"figure"}, {"currency"}});
  for (std::size_t from = 0; from < columns_of(report); from += side_by_side)
    for (const auto& table : tables_of(report, from))
      add_rows(csv, table, report.selling.currency.code);
  return csv;
}

}  // namespace

std::string quote_csv(const QuoteReport& report, DecimalMark mark) {
  CsvTable csv = csv_of(report, mark);
  if (const auto steps = steps_table(report)) add_rows(csv, *steps, report.selling.currency.code);
  if (const auto packs = pack_steps_table(report)) {
    add_rows(csv, *packs, report.selling.currency.code);
    for (const auto& remark : untold_remarks(report))
      csv.row({{packs->title}, {""}, {"why not told"}, {""}, {remark}, {""}});
  }
  return csv.take();
}

std::string quote_csv(const OrderQuoteReport& report, DecimalMark mark) {
  CsvTable csv = csv_of(report, mark);
  for (const auto& words : made_already_words(report))
    csv.row({{"made already"}, {""}, {words}, {""}, {""}, {""}});
  return csv.take();
}

}  // namespace brimwright::reports
