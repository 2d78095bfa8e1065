#pragma once

#include "chemistry/heat_findings.h"
#include "units/share.h"
#include "units/working.h"

#include <vector>

namespace brimwright::chemistry {

/// How the hottest lye and its cooling come about, as heat_findings has them: "peak_c", and
/// "cooling" where it is used at a stated temperature. `strength` is the pot's.
std::vector<Working> heat_workings(const HeatFindings& heat, const HeatQuestion& question,
                                   Share strength);

}  // namespace brimwright::chemistry
