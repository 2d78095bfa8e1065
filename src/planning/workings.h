#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <vector>

namespace brimwright::planning {

/// How the figures of `plan`, which is of `run`, come about. Each working is made from the figures
/// that the plan was made from, and told of a place in the plan's JSON; the order is that of the
/// hands: pieces, each batch, then their sums, decorations, powders, cut, bottles and the piece.
std::vector<Working> workings_of(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
