#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <cstddef>
#include <vector>

namespace brimwright::planning {

/// How one decoration comes about: casts, tray fills and melt, and how it sits or lies.
std::vector<Working> decoration_workings(const Run& run, const Plan& plan, std::size_t index);

/// How one powder comes about: "each_g" for a piece.
Working dust_working(const Dusting& dusting, const DustTally& dust);
/// "g": for so many pieces.
Working dust_to_weigh(const DustTally& dust, std::int64_t pieces, const Scales& scales);

}  // namespace brimwright::planning
