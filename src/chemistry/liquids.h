#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/remark.h"
#include "units/user_error.h"

#include <vector>

namespace brimwright::chemistry {

/// Gives every liquid that "replaces" water its rate of the fats: the mass whose own water is that
/// share of the formula's water. Its fat asks for lye, and more lye for more water, so the masses
/// are approached step by step, to the last digit.
void settle_liquids(Formula& formula);

/// Refuses liquids that bring more water than the formula has, and a lye left with so little water
/// of its own that its alkali would not dissolve (50 %), each with the figure.
void refuse_starved_lye(const Proportions& per_fat, const Place& where);

/// Refuses an acid that would count twice: two additives or liquids of one name, an acid both in a
/// liquid and an additive, a free fatty acid among the fats and again inside an additive.
void refuse_counted_twice(const Formula& formula);

/// What to watch with liquids: what else goes into the lye (into_lye.h), salt in the lye, fat
/// saponified in the pot, a composition remembered rather than read.
std::vector<Remark> liquid_cautions(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
