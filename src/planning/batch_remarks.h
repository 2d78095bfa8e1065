#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <string>
#include <vector>

namespace brimwright::planning {

// What is to be said of the batches' batters, each thing once. Where batches of different sizes
// differ in it, it names those that it is about.

enum class Saying { alarms, remarks, doubts };  // of a lye pot, no doubts
std::vector<Remark> of_base(const Plan& plan, Saying saying);
std::vector<Remark> of_topping(const Plan& plan, Saying saying);
std::vector<Remark> of_lye_pots(const Plan& plan, Saying saying);
/// Of the lyes that are made, the shared one instead of each batter's own, and of the pours.
std::vector<Remark> of_heat(const Plan& plan);

/// The run's batches: pieces to spare, and what one more or one fewer would change.
std::vector<Remark> of_counts(const Plan& plan);

}  // namespace brimwright::planning
