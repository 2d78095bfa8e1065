#pragma once

#include "planning/base_is.h"
#include "planning/batch_trials.h"
#include "planning/batches.h"
#include "planning/measured.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>

namespace brimwright::planning {

/// Plans `run`: pieces, batches, volume to mass by each batter's own density, losses, batter to
/// make, weighed ingredients, effective superfat, cost. UserError where the run contradicts itself,
/// or where no batch is within its limits.
Plan plan(const Run& run, const Measuring& help = {});

/// The same from what was measured of this run.
Plan plan_of(const Run& run, const Measured& measured);

/// The same for `sell` pieces instead of the run's own number. `measured` and `trials` are of this
/// run; for several numbers they are made once.
Plan plan_for(std::int64_t sell, const Run& run, const Measured& measured, BatchTrials& trials);

/// What that plan weighs out and counts, without label, cost and cautions.
Plan amounts_for(std::int64_t sell, const Run& run, const Measured& measured, BatchTrials& trials);

/// The plan of `pieces` that are made in `batches`.
Plan plan_in(Batches batches, const Pieces& pieces, const Run& run, const Measured& measured,
             BaseIs base);

}  // namespace brimwright::planning
