#include "reports/plan_words.h"
#include "reports/quote_tables.h"
#include "reports/text_table.h"
#include "units/shown_text.h"

namespace brimwright::reports {
namespace {

using Side = TextTable::Side;

std::string table_text(const QuoteTable& table) {
  std::vector<Side> sides(table.heads.size(), Side::right);
  sides.front() = Side::left;
  TextTable text(sides);
  if (table.needs_heads) text.row(table.heads);
  for (const auto& [name, cells, is_sum] : table.rows) {
    if (is_sum) text.rule();
    std::vector<std::string> row = {name};
    row.insert(row.end(), cells.begin(), cells.end());
    text.row(std::move(row));
  }
  return (table.title.empty() ? "" : "\n" + table.title + "\n") + text.text();
}

template <class Report>
std::string text_of(const Report& report, const std::string& name,
                    const std::string& way_to_a_price) {
  std::string text;
  for (const auto& alarm : alarms_of(report)) text += wrapped(alarm, "!! ", "   ");
  if (!text.empty()) text += "\n";
  text += name + "\n\n";
  for (const auto& words : made_already_words(report)) text += wrapped(words, "", "  ");
  if (!made_already_words(report).empty()) text += "\n";
  for (std::size_t from = 0; from < columns_of(report); from += side_by_side) {
    if (from > 0) text += "\n";
    for (const auto& table : tables_of(report, from)) text += table_text(table);
  }
  std::string remarks;
  for (const auto& remark : remarks_of(report, way_to_a_price))
    remarks += wrapped(remark, "  ", "    ");
  return text + (remarks.empty() ? "" : "\nTO KNOW\n" + remarks);
}

}  // namespace

std::string quote_text(const QuoteReport& report, const std::string& way_to_a_price) {
  const auto steps = steps_table(report), packs = pack_steps_table(report);
  return text_of(report, report.run.name, way_to_a_price) + (steps ? table_text(*steps) : "") +
         (packs ? table_text(*packs) : "");
}

std::string quote_text(const OrderQuoteReport& report, const std::string& way_to_a_price) {
  const std::string whom = whom_and_when(report.whom_for, report.due);
  return text_of(report, "Order " + (whom.empty() ? on_one_line(report.source) : whom),
                 way_to_a_price);
}

}  // namespace brimwright::reports
