#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// What to watch before weighing: a lye strength that makes the batter very wet or fast, what
/// liquids do in it.
std::vector<Remark> rate_cautions(const Formula& formula, const Proportions& per_fat);

/// What is doubtful in the formula's figures: a supplier's saponification value far from the
/// published range (a danger where it was confirmed and the superfat may be below zero), waxes that
/// saponify slowly, acids beyond what a thing has, values taken as exact.
std::vector<Remark> data_doubts(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
