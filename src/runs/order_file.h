#pragma once

#include "moulds/library.h"
#include "units/fields.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::runs {

/// Whether pieces that are made already are taken for an order, by her word alone.
struct TakesReady {
  bool is = false;
  std::vector<std::string> batches = {};  // these alone, by their codes; empty: whichever fit
};

/// So many saleable pieces of a run, whatever number its own file gives.
struct OrderLine {
  std::string run;  // its file
  std::int64_t pieces = 0;
  std::string together = {};  // the word of those it is poured together with; empty: with none
  Place where, together_at;
  TakesReady takes_ready = {};
  Place ready_at = {};
};

/// What is to be made for somebody (schema brimwright.order/1). Any text may be empty.
struct Order {
  std::string file, id, whom_for, note;
  std::optional<std::chrono::year_month_day> due;
  std::vector<OrderLine> lines;
};

/// Whether the document calls itself an order; nothing else in it is looked at.
bool is_order(const Fields& document);

/// UserError with file and field for anything wrong, as for a line that names another order or a
/// run that a line before it names, by whatever path.
Order read_order(const Fields& fields, const moulds::Library& library);

}  // namespace brimwright::runs
