#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <vector>

namespace brimwright::planning {

/// All that is used in `plan`, losses included, a line a material by the name that prices call it.
std::vector<CostLine> materials_used(const Plan& plan);
/// The same in two: of the base's batter, and of all else.
std::vector<CostLine> base_used(const Plan& plan);
std::vector<CostLine> used_beside_base(const Plan& plan);

/// What the material used in `plan` costs by the run's prices: price / pack x used, each line
/// rounded to the coin, divided by the saleable pieces. What has no price is listed as unpriced,
/// never taken as 0.
Cost cost_of(const Plan& plan, const Purse& purse);

}  // namespace brimwright::planning
