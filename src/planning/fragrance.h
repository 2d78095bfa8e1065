#pragma once

#include "planning/base_is.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/user_error.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// Shares a bottle over all batches of `plan`: what each batter gets, on the fine scale, rounded
/// down, with its rate and any limit it breaks; into the batches, and their sum into the plan.
/// UserError at `where` when the maker asks for half in each of two parts: that is an equal rate
/// only in equal batters, and the figures are given.
void share_bottle(Plan& plan, const Run& run, const Bottle& bottle, const Place& where);

/// For each part, save a base that is shared: additives, fragrances and colours above what their
/// document allows, with the most that it allows in this batter, as grams on her scale and as a
/// rate to be typed in; those limits that cannot be checked because the cured weight is not known.
std::vector<Remark> limit_cautions(const Run& run, const Plan& plan, BaseIs base);
/// For each part, fragrances without any limit.
std::vector<Remark> missing_limit_cautions(const Run& run, const Plan& plan, BaseIs base);

}  // namespace brimwright::planning
