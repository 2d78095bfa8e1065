#pragma once

#include "planning/run.h"
#include "planning/together.h"
#include "reports/coded_batch.h"
#include "reports/sheet_blocks.h"
#include "reports/vessel.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::reports {

/// Lines of an order whose base is mixed as one. It refers to their runs and their plan.
struct PouredTogether {
  struct Line {
    std::size_t number;  // in the order, from 0
    const planning::Run* run;
  };
  std::string word;         // that the lines have in common
  std::vector<Line> lines;  // as in Together::lines
  const planning::Together* planned;
};

/// What is mixed for whom, and how its cost is shared.
std::string together_words(const PouredTogether& of);
/// Each with its batches and what is weighed for them.
nlohmann::ordered_json together_json(const std::vector<PouredTogether>& all);
/// The base alone, as it is kept with its batches: what is weighed and noted of them, and what is
/// poured from each.
std::string base_json(const PouredTogether& of);

/// What is weighed of the base for its batch of that place in the plan, then the jugs of each line,
/// with the share of the batter that they take.
std::vector<Vessel> weigh_out(const PouredTogether& of, std::size_t batch);

/// Batches of a base and of its lines that have their codes already.
struct PouredCodes {
  std::vector<CodedBatch> base = {};
  std::vector<std::vector<CodedBatch>> lines = {};  // as PouredTogether::lines
};

/// For the bench: for each different batch of the base a sheet of its own, what of it goes to which
/// line, then the lines' sheets, with no second weighing of the base.
std::vector<Sheet> bench_sheets(const PouredTogether& of, const std::string& printed_at,
                                const PouredCodes& codes = {});

}  // namespace brimwright::reports
