#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/working.h"

namespace brimwright::chemistry {

/// How the density that a plain batter has by its ingredients comes about, as batter_density has
/// it; told of 100 g of fats and what goes with them.
Working computed_density_working(const Formula& formula, const Proportions& per_fat);

/// The density reckoned with: the measured one where the formula has it, else the computed.
Working density_working(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
