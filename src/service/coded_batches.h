#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "reports/bench_sheet.h"
#include "reports/together_report.h"
#include "runs/order_file.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::service {

/// What the records beside a run say of its batches.
struct CodedBatches {
  std::vector<reports::CodedBatch> codes = {};  // at most one a number: the reserved code, or else
                                                // that of its last making
  std::vector<Remark> remarks = {};             // of what they cannot say
};

/// Of `run` as it is planned. A batch that was begun by another plan has no code here: its weights
/// are others. Records that cannot be read keep nobody from weighing, and are told.
CodedBatches coded_batches(const planning::Run& run, const planning::Plan& plan);
/// The same of a base that lines of `order` are poured from, and of these.
reports::PouredCodes coded_base(const runs::Order& order, const reports::PouredTogether& base);

}  // namespace brimwright::service
