#pragma once

#include "chemistry/formula.h"
#include "planning/lye_pot.h"
#include "planning/weighing.h"
#include "units/user_error.h"

#include <vector>

namespace brimwright::service {

/// The last look before anything is shown: recomputes a batter's superfat from the masses as they
/// will be printed, by arithmetic of its own, apart from chemistry's and planning's: as the scales
/// show them, all in grams, and all in ounces.
///
/// UserError when one is below zero: then nothing is printed that could be weighed.
/// std::logic_error when it disagrees with the plan's figure by more than 0.02 percentage points,
/// when at the strongest that the alkali or its solution may be it lies below the lowest that the
/// plan tells, or when the printed ingredients do not add up to the printed batter: a fault of
/// ours.
void pass_lye_gate(const chemistry::Formula& formula, const planning::Weighing& weighing);

/// std::logic_error where the superfat of a weighing may come out below zero and no alarm tells.
void require_alarm(const planning::Weighing& weighing);

/// The same gate for what each batter takes from one pot of lye; `where` is for complaints.
void pass_pot_gate(const std::vector<planning::PotBatter>& batters, const planning::LyePot& pot,
                   const Place& where);

}  // namespace brimwright::service
