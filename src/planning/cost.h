#pragma once

#include "planning/run.h"
#include "planning/tally.h"

namespace brimwright::planning {

/// What the material used in `plan` costs by the run's prices: price / pack x used, each line
/// rounded to the coin, divided by the saleable pieces. What has no price is listed as unpriced,
/// never taken as 0.
Cost cost_of(const Plan& plan, const Purse& purse);

}  // namespace brimwright::planning
