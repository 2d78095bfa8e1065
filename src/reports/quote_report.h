#pragma once

#include "costing/quote.h"
#include "planning/run.h"

#include <string>
#include <vector>

namespace brimwright::reports {

/// For people: the numbers of pieces side by side, what a piece costs part by part, what to ask for
/// it, where another filling or batch begins, and what each material comes to. Where no way of
/// selling is known, `way_to_a_price` says what to do.
std::string quote_text(const planning::Run& run, const costing::Quote& quote,
                       const costing::Selling& selling, const std::string& way_to_a_price);
/// One JSON document, schema brimwright.quote/1.
std::string quote_json(const planning::Run& run, const costing::Quote& quote,
                       const costing::Selling& selling);

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
