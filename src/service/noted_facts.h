#pragma once

#include "learning/batch_facts.h"
#include "records/notes.h"
#include "service/planned_facts.h"

#include <vector>

namespace brimwright::service {

/// What was noted of a batch, into `facts`, which are those of its plan: it is one of `planned`.
void note_facts(learning::BatchFacts& facts, const PlannedFacts& plan, const PlannedBatch& planned,
                const records::NotedValues& notes, const std::vector<records::Weighing>& weighings);

}  // namespace brimwright::service
