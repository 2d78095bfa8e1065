#pragma once

#include "reports/quote_report.h"
#include "reports/quote_table.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

// A quote before it is on a terminal, on paper or in a spreadsheet.

/// How many columns stand side by side on a terminal and on paper.
inline constexpr std::size_t side_by_side = 4;

/// All figures of the columns `from` on, `side_by_side` of them at most.
std::vector<QuoteTable> tables_of(const QuoteReport& report, std::size_t from);
std::vector<QuoteTable> tables_of(const OrderQuoteReport& report, std::size_t from);

/// Where another whole begins, if anywhere.
std::optional<QuoteTable> steps_table(const QuoteReport& report);

/// Where another pack begins, if anywhere: a row a step, and one for each material some of whose
/// steps are not told.
std::optional<QuoteTable> pack_steps_table(const QuoteReport& report);
/// Of which materials they are not told, and why.
std::vector<std::string> untold_remarks(const QuoteReport& report);
std::string why_untold();

/// A number of pieces, or so many times an order.
std::size_t columns_of(const QuoteReport& report);
std::size_t columns_of(const OrderQuoteReport& report);

/// What must be seen before any figure: dangers, prices below cost.
std::vector<std::string> alarms_of(const QuoteReport& report);
std::vector<std::string> alarms_of(const OrderQuoteReport& report);
/// What of an order is made already: what the figures are of.
std::vector<std::string> made_already_words(const QuoteReport& report);
std::vector<std::string> made_already_words(const OrderQuoteReport& report);
/// What must be known to take the figures right.
std::vector<std::string> remarks_of(const QuoteReport& report, const std::string& way_to_a_price);
std::vector<std::string> remarks_of(const OrderQuoteReport& report,
                                    const std::string& way_to_a_price);

/// Those of them that are about how the run or the order is read, for programs too.
std::vector<std::string> notes_of(const QuoteReport& report);
std::vector<std::string> notes_of(const OrderQuoteReport& report);

std::string in_money(const trade::ExactMoney& money, const Place& where);
/// What the lines come to as they are printed.
Money printed_cost(const costing::QuotedOrder& order, const Place& where);
/// "Ask, with tax": as it stands beside a price.
std::string ask_words(const costing::Selling& selling);

}  // namespace brimwright::reports
