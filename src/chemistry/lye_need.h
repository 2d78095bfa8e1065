#pragma once

#include "chemistry/alkali.h"
#include "chemistry/formula.h"
#include "units/quantity.h"

#include <vector>

namespace brimwright::chemistry {

/// Pure `alkali` that exactly saponifies `fat`, before superfat and before the alkali's purity.
///
/// m(fat) * SV * M(alkali) / M(KOH), with SV as ISO 3657 defines it.
Mass alkali_for(Alkali alkali, Mass fat, SaponificationValue sv);

/// Dispersing oil beyond the formula for each additive (zero elsewhere), from the additives'
/// masses.
std::vector<Mass> extra_oils_for(const Formula& formula, const std::vector<Mass>& additives);

/// Alkalis to weigh for fats, extra dispersing oils and additives as they are weighed: the
/// formula's superfat on everything that is fat, acids' need added, divided by purity. Not rounded.
std::vector<Mass> alkalis_for(const Formula& formula, const std::vector<Mass>& fats,
                              const std::vector<Mass>& extra_oils,
                              const std::vector<Mass>& additives);

/// Pure alkali in `alkalis` as weighed, by each one's purity.
Mass pure_alkali_in(const Formula& formula, const std::vector<Mass>& alkalis);

/// The water in those of `alkalis`, as weighed, that are solutions.
Mass water_in_solutions(const Formula& formula, const std::vector<Mass>& alkalis);

/// All the water that goes with alkalis as weighed, in the formula's own way of stating it, before
/// what liquids and solutions bring of it is taken off (`water_in_liquids`, `water_in_solutions`).
/// Not rounded.
/// `all_fats` are the formula's fats together, without extra dispersing oil.
Mass water_for(const Formula& formula, const std::vector<Mass>& alkalis, Mass all_fats);

}  // namespace brimwright::chemistry
