#pragma once

#include "learning/batch_facts.h"
#include "records/batches.h"
#include "records/notes.h"
#include "records/records.h"
#include "service/renamed_files.h"

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::service {

/// What a plan took for granted, as its answer keeps it, and what its batches are.
struct PlannedFacts;
std::shared_ptr<const PlannedFacts> planned_facts(const std::string& plan_answer);

/// What a batch of that plan tells, before anything is noted of it. The names in it are those of
/// files, without their folders.
learning::BatchFacts facts_of_plan(const PlannedFacts& plan, std::int64_t number);

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
