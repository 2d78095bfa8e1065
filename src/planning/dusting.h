#pragma once

#include "planning/plan.h"
#include "planning/run.h"

#include <functional>

namespace brimwright::planning {

/// What one powder takes: as said for each piece, or what lies on its exposed surface / the share
/// that lands. `exposed` is asked only when it is needed, for one cavity's cast.
DustTally dust_tally(const Run& run, std::size_t index, const Pieces& pieces,
                     const std::function<Area()>& exposed);

}  // namespace brimwright::planning
