#pragma once

#include "planning/plan.h"
#include "planning/run.h"

#include <cstdint>
#include <functional>

namespace brimwright::planning {

/// What one powder takes on a piece: as said, or what lies on its exposed surface / the share that
/// lands. `exposed` is asked only when it is needed, for one cavity's cast. Nothing is made of it
/// yet.
DustTally dust_each(const Run& run, std::size_t index, std::int64_t per_cast,
                    const std::function<Area()>& exposed);

/// The same for so many pieces, rounded up on the fine scale.
DustTally dust_for(const DustTally& each, std::int64_t pieces, const Scales& scales);

}  // namespace brimwright::planning
