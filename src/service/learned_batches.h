#pragma once

#include "learning/batch_facts.h"
#include "records/batches.h"
#include "records/notes.h"
#include "records/records.h"
#include "service/planned_facts.h"
#include "service/renamed_files.h"
#include "units/text_places.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace brimwright::service {

/// A base that was mixed for several of them.
struct KeptBase {
  records::Batch batch;
  PlannedBase planned;
  records::Notes notes;
  std::vector<std::size_t> lines;  // what was poured from it, by places among the batches
};

/// What records hold of batches, read: in the order of their making, of each its plan and what that
/// was made from. Those whose plans kept no assumptions yet are left out.
struct KeptBatches {
  const records::Records& records;  // which outlives this
  std::vector<learning::BatchFacts> facts = {};
  std::vector<std::shared_ptr<const PlannedFacts>> plans = {};
  std::vector<std::size_t> sources = {};  // by the places of their hashes
  TextPlaces hashes_of_sources = {};
  std::vector<KeptBase> bases = {};
};

KeptBatches kept_batches(const records::Records& records);

/// Facts of batches, and whether they are of what bears its names today.
struct LearnedBatches {
  std::vector<learning::BatchFacts> facts;
  std::size_t earlier = 0;  // of another formula or mould under the same name; renamed, so that
                            // they tell nothing of today's
};

/// All batches, in the order of their making. What bears a name is what `today` has by it; without
/// that, what the last batch had. A file that was `renamed` since is told of by the name that it
/// has today.
LearnedBatches learned_batches(KeptBatches kept, const PlannedFacts* today,
                               RenamedFiles* renamed = nullptr);

}  // namespace brimwright::service
