#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <vector>

namespace brimwright::planning {

/// How the sums over whippings and batches come about: places below "pour", "pipe", "lye_pot",
/// "dust", "bottles" and "batches.0.pipe". What is no sum is the first batch's, as in the plan, and
/// told as `of_batches` tells it; superfat is the worst one's.
std::vector<Working> sum_workings(const Run& run, const Plan& plan,
                                  const std::vector<Working>& of_batches);

}  // namespace brimwright::planning
