#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <functional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// Whether it is water, which costs nothing where it has no price and no pack: then it is from the
/// tap.
bool may_be_from_tap(const std::string& material);

/// All that is used in `plan`, losses included, a line a material by the name that prices call it.
std::vector<CostLine> materials_used(const Plan& plan);
/// The same in two: of the base's batter, and of all else.
std::vector<CostLine> base_used(const Plan& plan);
std::vector<CostLine> used_beside_base(const Plan& plan);

/// The same with what she makes ahead in what it is made of, unless `stays` says of its name that
/// it is taken as it stands: by a price of its own, say.
std::vector<CostLine> in_parts(const std::vector<CostLine>& lines,
                               const std::function<bool(const std::string&)>& stays);

/// What the material used in `plan` costs by the run's prices: price / pack x used, each line
/// rounded to the coin, divided by the saleable pieces. What is made ahead and has no price of its
/// own costs what it is made of. What has no price is listed as unpriced, never taken as 0, but for
/// water, which is then from the tap.
Cost cost_of(const Plan& plan, const Purse& purse);

}  // namespace brimwright::planning
