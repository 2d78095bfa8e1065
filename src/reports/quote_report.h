#pragma once

#include "costing/order_quote.h"
#include "costing/quote.h"
#include "planning/run.h"
#include "reports/buying_report.h"
#include "reports/csv_table.h"
#include "reports/ready_report.h"
#include "reports/sheet_blocks.h"
#include "reports/together_report.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// A number of pieces from which more is to be laid out for whole packs of a material, by itself
/// and without postage.
struct PackStep {
  std::int64_t sell = 0;
  std::string material, shown;  // as in Buying::Material
  Money more;                   // than one piece fewer asks for
};

/// A material whose cheapest packs were too much work to find, so that no step of it between these
/// numbers of pieces is told.
struct UntoldPacks {
  std::string material, shown;
  std::int64_t from = 0, to = 0;
};
struct PackSteps {
  std::vector<PackStep> told;
  std::vector<UntoldPacks> untold = {};
};

/// A quote of a run, and the purchase for each of its numbers of pieces.
struct QuoteReport {
  const planning::Run& run;
  const costing::Quote& quote;
  const costing::Selling& selling;
  const std::vector<Buying>& purchases;
  const PackSteps& pack_steps;
  std::vector<std::string> remarks = {};  // on how the run is read
};

/// What of an order is made already, and what making the rest of it costs.
struct RestQuote {
  ReadyOrder ready;
  std::optional<costing::QuotedOrder> to_make = {};  // those lines of which something is to make

  /// Of the order's line `k`; nullptr where none of it is to make.
  const costing::QuotedNumber* of_line(std::size_t k) const;
};

/// The same of an order, for each number of times that it is made; at least one. Costs and prices
/// of `orders` are those of all pieces made anew; purchases are for what is left to make and pack.
struct OrderQuoteReport {
  std::string source;  // its file
  std::string whom_for;
  std::optional<std::chrono::year_month_day> due;
  const std::vector<costing::QuotedOrder>& orders;
  const costing::Selling& selling;
  const std::vector<Buying>& purchases;
  const std::vector<std::vector<PouredTogether>>& together;  // for each of `orders`
  const std::vector<RestQuote>& rests;                       // likewise
  std::vector<std::string> remarks = {};                     // on how the order is read
};

/// For people: the numbers of pieces side by side, what a piece costs part by part, what to ask for
/// it, what to lay out now in whole packs, where another filling or batch begins, and what each
/// material comes to. Where no way of selling is known, `way_to_a_price` says what to do.
std::string quote_text(const QuoteReport& report, const std::string& way_to_a_price);
std::string quote_text(const OrderQuoteReport& report, const std::string& way_to_a_price);
/// One JSON document, schema brimwright.quote/1 or brimwright.order_quote/1.
std::string quote_json(const QuoteReport& report);
std::string quote_json(const OrderQuoteReport& report);
/// A line a figure (reports/csv_table.h).
std::string quote_csv(const QuoteReport& report, DecimalMark mark);
std::string quote_csv(const OrderQuoteReport& report, DecimalMark mark);
/// All that the text has, on paper; of a run with its picture.
Sheet quote_sheet(const QuoteReport& report, const std::string& printed_at);
Sheet quote_sheet(const OrderQuoteReport& report, const std::string& printed_at);
/// For the customer: what is offered at which price, and no cost. All is priced, by one way alone.
Sheet offer_sheet(const QuoteReport& report, const std::string& printed_at);
Sheet offer_sheet(const OrderQuoteReport& report, const std::string& printed_at);

/// What a piece costs against the number made, each step a step; and below where the money goes,
/// part by part. Something is priced.
Drawing quote_picture(const QuoteReport& report);
std::string quote_picture_svg(const QuoteReport& report);

/// What a part is called: "Base", "Packaging".
std::string name_of(costing::CostPart part);

/// One part of what a piece costs, in coins that add to the whole.
struct PrintedPart {
  costing::CostPart part;
  Money each;
};
struct PrintedCost {
  Money each;                      // of a piece that is sold
  std::vector<PrintedPart> parts;  // those that there are, in the order of the work
  Money total;                     // of the run
  std::vector<Money> items;        // of the run, as QuotedNumber::items; 0 for what has no price
};
PrintedCost printed(const costing::QuotedNumber& number, const Place& where);

/// "25: another filling and another batch".
std::string step_words(const costing::Step& step);

}  // namespace brimwright::reports
