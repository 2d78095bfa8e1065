#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "planning/weighing.h"
#include "units/working.h"

#include <vector>

namespace brimwright::planning {

/// How what is weighed for one batter comes about, as trial_weighing_of has it, and what it amounts
/// to: "ingredients.0.g", "fats_g", "water_g", the lye's strength and "superfat_percent.effective".
std::vector<Working> weighing_workings(const chemistry::Formula& formula,
                                       const chemistry::Proportions& per_fat,
                                       const Weighing& weighing);

}  // namespace brimwright::planning
