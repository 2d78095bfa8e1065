#include "reports/plan_words.h"
#include "reports/quote_tables.h"
#include "units/shown_text.h"

namespace brimwright::reports {
namespace {

SheetGrid grid_of(const QuoteTable& table) {
  SheetGrid grid{.rows = {table.heads}};
  for (const auto& [name, cells, is_sum] : table.rows) {
    grid.rows.push_back({name});
    grid.rows.back().insert(grid.rows.back().end(), cells.begin(), cells.end());
    grid.rows.back().resize(table.heads.size());
    if (is_sum) grid.marked = grid.rows.size() - 1;
  }
  return grid;
}

void add(Sheet& sheet, const QuoteTable& table) {
  if (!table.title.empty()) sheet.blocks.emplace_back(SheetStep{table.title});
  sheet.blocks.emplace_back(grid_of(table));
}

template <class Report>
Sheet sheet_of(const Report& report, const std::string& title, const std::string& subtitle,
               const std::string& printed_at) {
  Sheet sheet{.title = title, .subtitle = subtitle, .blocks = {}, .printed_at = printed_at};
  for (const auto& alarm : alarms_of(report))
    sheet.blocks.emplace_back(SheetWarning{Severity::danger, alarm});
  for (const auto& words : made_already_words(report)) sheet.blocks.emplace_back(SheetWords{words});
  for (std::size_t from = 0; from < columns_of(report); from += side_by_side)
    for (const auto& table : tables_of(report, from)) add(sheet, table);
  return sheet;
}

template <class Report>
void add_remarks(Sheet& sheet, const Report& report) {
  sheet.blocks.emplace_back(SheetHeading{"To know", ""});
  for (const auto& remark : remarks_of(report, "none is asked for"))
    sheet.blocks.emplace_back(SheetWords{remark});
}

// An offer.

/// A line of an offer: so many pieces of a soap at that price.
struct Offered {
  std::string what;
  std::int64_t pieces;
  trade::ExactMoney each, together;
};

std::string about_tax(const costing::Selling& selling) {
  if (!selling.tax) return "";
  return selling.tax->is_in_asked ? ", with tax" : ", without tax";
}

SheetGrid offered_grid(const std::vector<Offered>& lines, const costing::Selling& selling,
                       const Place& where) {
  SheetGrid grid{.rows = {{"", "pieces", "each" + about_tax(selling) + ", " + selling.currency.code,
                           "together, " + selling.currency.code}}};
  for (const auto& [what, pieces, each, together] : lines)
    grid.rows.push_back(
        {what, std::to_string(pieces), in_money(each, where), in_money(together, where)});
  return grid;
}

/// Under her letterhead, where she has one.
Sheet offer(const std::string& of_what, const costing::Selling& selling,
            const std::string& printed_at) {
  const auto& letterhead = selling.letterhead;
  Sheet sheet{.title = letterhead.empty() ? "Offer" : letterhead.front(),
              .subtitle = {},
              .blocks = {},
              .printed_at = printed_at};
  for (std::size_t i = 1; i < letterhead.size(); ++i)
    sheet.subtitle += (i == 1 ? "" : ", ") + letterhead[i];
  if (!letterhead.empty()) sheet.blocks.emplace_back(SheetHeading{"Offer", of_what});
  if (letterhead.empty()) sheet.subtitle = of_what;
  return sheet;
}

}  // namespace

Sheet quote_sheet(const QuoteReport& report, const std::string& printed_at) {
  Sheet sheet = sheet_of(report, report.run.name, "What it costs, what to ask", printed_at);
  if (!report.quote.costs.empty()) sheet.blocks.emplace_back(SheetDrawing{quote_picture(report)});
  if (const auto steps = steps_table(report)) add(sheet, *steps);
  if (const auto packs = pack_steps_table(report)) add(sheet, *packs);
  add_remarks(sheet, report);
  return sheet;
}

Sheet quote_sheet(const OrderQuoteReport& report, const std::string& printed_at) {
  const std::string whom = whom_and_when(report.whom_for, report.due);
  Sheet sheet = sheet_of(report, "Order" + (whom.empty() ? "" : " " + whom),
                         "What it costs, what to ask", printed_at);
  add_remarks(sheet, report);
  return sheet;
}

/// Each number of pieces is an offer of its own, so nothing is summed up.
Sheet offer_sheet(const QuoteReport& report, const std::string& printed_at) {
  const std::string whom = whom_and_when(report.run.whom_for, report.run.due);
  Sheet sheet =
      offer(report.run.name + (whom.empty() ? "" : ", " + whom), report.selling, printed_at);
  std::vector<Offered> lines;
  for (const auto& number : report.quote.numbers) {
    const auto each = trade::exact(number.prices.front().told.asked);
    lines.push_back(
        {report.run.name, number.pieces.sell, each, trade::Fraction(number.pieces.sell) * each});
  }
  sheet.blocks.emplace_back(offered_grid(lines, report.selling, {report.run.file, ""}));
  return sheet;
}

Sheet offer_sheet(const OrderQuoteReport& report, const std::string& printed_at) {
  const Place where{report.source, ""};
  Sheet sheet = offer(whom_and_when(report.whom_for, report.due), report.selling, printed_at);
  for (const auto& order : report.orders) {
    if (report.orders.size() > 1)
      sheet.blocks.emplace_back(SheetHeading{std::to_string(order.times) + " times", ""});
    std::vector<Offered> lines;
    for (const auto& [run, number] : order.lines) {
      const auto each = trade::exact(number.prices.front().told.asked);
      lines.push_back({run, number.pieces.sell, each, trade::Fraction(number.pieces.sell) * each});
    }
    SheetGrid grid = offered_grid(lines, report.selling, where);
    const auto& sum = order.prices.front();
    grid.rows.push_back({"Together", std::to_string(order.pieces), "", in_money(sum.asked, where)});
    grid.marked = grid.rows.size() - 1;
    if (report.selling.tax && report.selling.tax->is_in_asked)
      grid.rows.push_back({"of it tax", "", "", in_money(sum.tax, where)});
    sheet.blocks.emplace_back(std::move(grid));
  }
  return sheet;
}

}  // namespace brimwright::reports
