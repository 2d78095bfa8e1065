#pragma once

#include "planning/lye_pot.h"
#include "planning/run.h"
#include "units/working.h"

#include <vector>

namespace brimwright::planning {

/// How a shared lye comes about, as lye_pot has it: alkalis, water, the shares and their superfat.
std::vector<Working> lye_pot_workings(const std::vector<PotBatter>& batters, const LyePot& pot,
                                      const PotQuestion& question);

}  // namespace brimwright::planning
