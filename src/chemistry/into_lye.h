#pragma once

#include "chemistry/formula.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// What to watch with what goes into the lye beside alkali and water: sugar, honey and milk, which
/// heat it further and give off carbon monoxide; beer, wine and spirits, which foam over; glycol
/// and melt-and-pour, which do not belong there at all. Known by composition where the formula
/// gives one, otherwise by whole words of the name.
std::vector<Remark> cautions_into_lye(const Formula& formula);

}  // namespace brimwright::chemistry
