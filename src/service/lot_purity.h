#pragma once

#include "planning/run.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/records.h"
#include "runs/supplies.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::service {

/// How pure the alkali of a row was planned to be: by the formulas of its run, or, without that, by
/// the name that the row has ("KOH, 90 % pure"). None of what is no dry alkali.
std::vector<runs::PlannedPurity> purities_of_row(const planning::Run& run,
                                                 const records::Weighed& row);
std::vector<runs::PlannedPurity> purities_in_name(const records::Weighed& row);

/// Adds `make` to what is unfit for `row` where it is its alkali, of another purity than planned.
void leave_out_other_purity(records::Weighed& row, const std::string& make,
                            const std::vector<runs::PlannedPurity>& planned);

/// Alkali that a batch has of lots of another purity than planned: she chose them. A danger where
/// that is more lye.
struct OtherPurities {
  std::vector<Remark> remarks = {};
  bool has_more_lye = false;
};
OtherPurities other_purities(const records::Records& records, const records::Batch& batch,
                             const planning::Run& run);

}  // namespace brimwright::service
