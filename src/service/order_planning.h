#pragma once

#include "costing/quote.h"
#include "moulds/library.h"
#include "planning/plan.h"
#include "planning/run.h"
#include "planning/together.h"
#include "reports/together_report.h"
#include "runs/order_file.h"
#include "service/purchasing.h"
#include "service/requests.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace brimwright::service {

/// A line of an order, ready to be planned for any number of pieces.
struct OrderedRun {
  OrderedRun(runs::OrderLine line, planning::Run run, const Caller& caller);
  OrderedRun(const OrderedRun&) = delete;  // the trials are of its run

  runs::OrderLine line;
  planning::Run run;
  planning::Measured measured;
  planning::BatchTrials trials;
};
using OrderedRuns = std::vector<std::unique_ptr<OrderedRun>>;

/// The runs of an order's lines, in their order; the caller hears of their files.
OrderedRuns ordered_runs(const runs::Order& order, const moulds::Library& library,
                         const Caller& caller);

/// Lines with one word, two at least, whose base is mixed as one.
struct PlannedTogether {
  std::string word;
  std::vector<std::size_t> lines;  // of the order, as Together::lines
  planning::Together together;
};

/// All lines of an order, planned and past the gates.
struct PlannedOrder {
  std::vector<planning::Plan> lines;
  std::vector<PlannedTogether> together;

  /// Those that a line is poured with; nullptr where it is by itself.
  const PlannedTogether* with(std::size_t line) const;
};

/// The order made `times` times, at one go. UserError where lines that are to be poured together
/// cannot be.
PlannedOrder planned_order(const OrderedRuns& runs, std::int64_t times);

/// What of each batch of the base a line takes.
costing::PartOfBase part_of_base(const PlannedTogether& of, std::size_t line);

/// All that the lines take; each shared base once.
Materials materials_in(const OrderedRuns& runs, const PlannedOrder& order);

/// The same for reports, which refer to both.
std::vector<reports::PouredTogether> poured_together(const OrderedRuns& runs,
                                                     const PlannedOrder& order);

/// What to tell of words that one line alone has.
std::vector<std::string> lone_words(const runs::Order& order);

}  // namespace brimwright::service
