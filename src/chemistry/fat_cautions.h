#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// Refuses a formula that would have most of its lye for waxes that saponify slowly: UserError at
/// `where`.
void refuse_wax_for_fat(const Formula& formula, const Proportions& per_fat, const Place& where);

/// What to watch with waxes that saponify slowly (`SlowToSaponify`): what superfat comes out where
/// only their free acids react, which is a danger below zero. Expects a formula that is not
/// refused.
std::vector<Remark> slow_wax_cautions(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
