#pragma once

#include "chemistry/heat_findings.h"
#include "planning/lye_pot.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <vector>

namespace brimwright::planning {

/// What shares the batch's pot of lye: its base, then each whipping. They refer to both arguments.
std::vector<PotBatter> batters_of_pot(const Run& run, const Batch& batch);

/// What is asked of the pot's heat: where the batters' benches differ, what makes the pot hotter,
/// and the colder of its uses. Expects a topping.
chemistry::HeatQuestion temperatures_of_pot(const Run& run);

/// Makes one lye for all of them: the batch's `lye_pot`, and how hot it gets. Expects run.lye_pot
/// and a topping. UserError as of lye_pot().
void share_lye(Batch& batch, const Run& run);

}  // namespace brimwright::planning
