#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// What to watch with acids: the water they bring beside the formula's, with the strength it makes
/// in the pot and in the batter; a thing named like an acid that is said to hold none; a strength
/// that only the formula's "confirmed" stands for; a typed figure, taken as exact.
std::vector<Remark> acid_cautions(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
