#pragma once

#include "planning/plan.h"
#include "planning/run.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// `bottle` over batters of `parts`, at one rate for all: gives each its batter's share of it.
/// Expects parts above zero.
std::vector<Mass> shared_by_rate(Mass bottle, const std::vector<Mass>& parts);

/// What each part gets of the bottle, on the fine scale, rounded down, with its rate and any limit
/// it breaks. UserError at `where` when the maker asks for half in each of two parts: that is an
/// equal rate only in equal batters, and the figures are given.
BottleTally bottle_tally(const Run& run, const Plan& plan, const Bottle& bottle,
                         const Place& where);

/// For each part: fragrances and colours above what their document allows in the finished soap,
/// those limits that cannot be checked because the cured weight is not known, and fragrances
/// without any limit. (Limits on fats and batter: chemistry's rate_cautions.)
std::vector<Remark> limit_cautions(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
