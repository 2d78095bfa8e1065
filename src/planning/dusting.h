#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <optional>

namespace brimwright::planning {

/// What one powder takes on a piece: as said, or what lies on its exposed surface / the share that
/// lands. `exposed` is of one cavity's cast, needed where a powder goes by the surface. Nothing is
/// made of it yet.
DustTally dust_each(const Run& run, std::size_t index, std::int64_t per_cast,
                    const std::optional<Area>& exposed);

/// The same for so many pieces, rounded up on the fine scale.
DustTally dust_for(const DustTally& each, std::int64_t pieces, const Scales& scales);

}  // namespace brimwright::planning
