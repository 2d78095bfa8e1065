#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// How the topping of one whipping comes about, from its visible shape to its bowl. `headspace` is
/// the headspace between pour line and brim, without what stands in it.
std::vector<Working> whipping_workings(const Run& run, const Whipping& whipping, Volume headspace,
                                       std::int64_t per_cast);

}  // namespace brimwright::planning
