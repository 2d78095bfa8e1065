#pragma once

#include "planning/batch_trials.h"
#include "planning/measured.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// How a run is made in batches.
struct Batches {
  std::int64_t count = 0;
  std::vector<Batch> different;  // each weighed, largest first
  std::vector<Limit> limits;     // to a batch
  std::vector<Around> around;
};

/// The batches in which `pieces` are made. `trials` may have weighed for other numbers before.
/// UserError where no batch is within its limits, or one cannot be weighed.
Batches batches_of(const Run& run, const Measured& measured, const Pieces& pieces,
                   BatchTrials& trials);

}  // namespace brimwright::planning
