#pragma once

#include "planning/base_is.h"
#include "planning/run.h"
#include "planning/tally.h"

namespace brimwright::planning {

/// All cautions of `plan`, anew and in order. Of a base that is shared those that give weights of
/// it are the shared base's, not this plan's.
void collect_cautions(Plan& plan, const Run& run, BaseIs base = BaseIs::its_own);

}  // namespace brimwright::planning
