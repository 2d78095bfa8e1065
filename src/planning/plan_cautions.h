#pragma once

#include "planning/run.h"
#include "planning/tally.h"

namespace brimwright::planning {

/// All cautions of `plan`, anew and in order.
void collect_cautions(Plan& plan, const Run& run);

}  // namespace brimwright::planning
