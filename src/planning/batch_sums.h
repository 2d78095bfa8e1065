#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <vector>

namespace brimwright::planning {

/// A batch's topping: its whippings together.
PipeTally sum_of(const Run& run, const std::vector<Whipping>& whippings);

// What the batches, one at least, come to together. Masses, losses, loads and ingredients are sums,
// the superfat is the worst batch's, the cured weight the least; what belongs to one pot or bowl is
// the first batch's, which is the largest. Alarms and remarks stay with the batches.
PourTally pour_of(const Run& run, const std::vector<Batch>& batches);
PipeTally pipe_of(const Run& run, const std::vector<Batch>& batches);

}  // namespace brimwright::planning
