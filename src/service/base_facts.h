#pragma once

#include "learning/batch_facts.h"
#include "records/batches.h"
#include "records/notes.h"
#include "service/planned_facts.h"

#include <vector>

namespace brimwright::service {

/// What a base tells that was mixed for several runs, by its plan and what is noted of it. `lines`
/// are the facts of the batches that were poured from it, one at least, each with its cavities and
/// the line that was reached there.
learning::BatchFacts facts_of_base(const records::Batch& base, const PlannedBase& planned,
                                   const records::NotedValues& notes,
                                   const std::vector<const learning::BatchFacts*>& lines);

}  // namespace brimwright::service
