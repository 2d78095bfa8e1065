#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "units/working.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// How the base of one batch comes about, from the level curve to its layers' jugs.
std::vector<Working> pour_workings(const Run& run, const PourTally& pour, std::int64_t casts);

/// Of any batter: "mass_each_g", "in_pieces_g" and "lost_g"; `lost` is what the run says of losses.
std::vector<Working> batter_workings(const BatterTally& batter, std::int64_t casts,
                                     const std::vector<Given>& lost);

/// "make_g": the sum of what is weighed.
Working make_working(const BatterTally& batter, const std::vector<Given>& lost, Mass asked);

}  // namespace brimwright::planning
