#pragma once

#include "chemistry/heat_findings.h"
#include "planning/batch_limits.h"
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

/// What a batch pours: a base weighed for it, with all that is to be said of it, or its part of one
/// that is mixed for others too.
struct BaseOfBatch {
  Weighing weighing;
  chemistry::HeatFindings heat;
};

/// A batch of so many casts that pours `base`; its jugs filled, its topping weighed, a shared pot
/// of lye made. How many pieces and which of the run's batches it is, is not known yet.
Batch batch_of(const Run& run, const Measured& measured, std::int64_t casts, BatchTrials& trials,
               const BatchLimits& limits, BaseOfBatch base);

/// Adds what is to be said of a base weighed for `run`, and how warm it gets.
BaseOfBatch told_base(Weighing weighed, const Run& run, const Measured& measured);

/// The batches in which `pieces` are made. `trials` may have weighed for other numbers before.
/// UserError where no batch is within its limits, or one cannot be weighed.
Batches batches_of(const Run& run, const Measured& measured, const Pieces& pieces,
                   BatchTrials& trials);

}  // namespace brimwright::planning
