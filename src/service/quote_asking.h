#pragma once

#include "costing/selling.h"
#include "moulds/library.h"
#include "planning/plan.h"
#include "reports/quote_report.h"
#include "runs/supplies.h"
#include "service/purchasing.h"
#include "service/requests.h"
#include "units/question.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

// What a quote of a run and one of an order have in common.

/// "12,24,48": each once, in the order typed; of `what`. UserError for too many.
std::vector<std::int64_t> numbers_from(const std::string& typed, const Place& where,
                                       const std::string& what = "pieces");

/// Each number up to twice the largest is planned, in a millisecond or two.
inline constexpr std::int64_t most_pieces = 5000;
/// `pieces`, if a quote of so many is soon made.
std::int64_t within_reach(std::int64_t pieces, const Place& where);

/// A way to a price that is typed takes the place of the studio's; one that is named stays alone.
void ask_as_typed(costing::Selling& selling, const QuoteRequest& request, const UserTerms& terms);

/// What to do where there is none.
std::string way_to_a_price(const UserTerms& terms);

/// The studio's shelf and packs; where its prices are in another money than the run's, none.
runs::Supplies supplies_for(const planning::Run& run, const costing::Selling& selling,
                            const moulds::Library& library);

/// What goes into the pieces and round them.
Materials all_materials(const planning::Run& run, const planning::Plan& plan,
                        const costing::Selling& selling);

reports::Buying purchase_for(Materials materials, const runs::Supplies& supplies,
                             const std::vector<const planning::Run*>& runs);

/// The files that are asked for beside the answer. UserError for an offer where something has no
/// price, or where not exactly one way of selling is told.
std::vector<MadeFile> files_for(const QuoteRequest& request, const reports::QuoteReport& report,
                                const UserTerms& terms);
std::vector<MadeFile> files_for(const QuoteRequest& request,
                                const reports::OrderQuoteReport& report, const UserTerms& terms);

}  // namespace brimwright::service
