#pragma once

#include "learning/batch_facts.h"
#include "records/batches.h"
#include "records/notes.h"
#include "records/records.h"
#include "service/planned_facts.h"
#include "service/renamed_files.h"

#include <cstddef>
#include <vector>

namespace brimwright::service {

/// Facts of batches, and whether they are of what bears its names today.
struct LearnedBatches {
  std::vector<learning::BatchFacts> facts;
  std::size_t earlier = 0;  // of another formula or mould under the same name; renamed, so that
                            // they tell nothing of today's
};

/// All batches of `records`, in the order of their making. What bears a name is
/// what `today` has by it; without that, what the last batch had. A file that was `renamed` since
/// is told of by the name that it has today.
LearnedBatches learned_batches(const records::Records& records, const PlannedFacts* today,
                               RenamedFiles* renamed = nullptr);

}  // namespace brimwright::service
