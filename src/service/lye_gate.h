#pragma once

#include "chemistry/formula.h"
#include "planning/weighing.h"

namespace brimwright::service {

/// The last look before anything is shown: recomputes a batter's superfat from the masses as they
/// will be printed, by arithmetic of its own, apart from chemistry's and planning's.
///
/// UserError when it is below zero: then nothing is printed that could be weighed. std::logic_error
/// when it disagrees with the plan's figure by more than 0.02 percentage points, or when the
/// printed ingredients do not add up to the printed batter: a fault of ours.
void pass_lye_gate(const chemistry::Formula& formula, const planning::Weighing& weighing);

}  // namespace brimwright::service
