#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "records/batches.h"
#include "records/lot_use.h"
#include "records/records.h"
#include "runs/supplies.h"
#include "units/question.h"
#include "units/remark.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

/// What is weighed and counted for the run's batch of that number, a row for each thing as often as
/// it is weighed; what is melted ahead for the whole run, and decorations that are bought, with the
/// first. `batch` is that of its size.
std::vector<records::Weighed> weighed_for(const planning::Run& run, const planning::Plan& plan,
                                          const planning::Batch& batch, std::int64_t number);

/// Puts into `rows` what lots serve as their materials besides those called so, by the studio.
void find_what_serves(std::vector<records::Weighed>& rows, const records::Records& records,
                      const runs::Supplies& supplies);

/// What was typed of lots to take: "olive=OL-12" or "pour.fats.olive=OL-12", repeated for more than
/// one, and codes of lots of which more is taken than is left.
struct LotWishes {
  std::vector<std::string> lots = {}, beyond_stock = {};
};
records::FromLots read_wishes(const LotWishes& typed, const UserTerms& terms);

/// Takes from lots what the batch weighs by its plan. Within the act that begins it. Tells of lots
/// that were passed over. Question where the records have too little.
std::vector<Remark> take_of_lots(records::Records& records, const records::Batch& batch,
                                 const planning::Run& run, const planning::Plan& plan,
                                 const moulds::Library& library, const LotWishes& wishes,
                                 const UserTerms& terms);

}  // namespace brimwright::service
