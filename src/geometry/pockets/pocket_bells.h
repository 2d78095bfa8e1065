#pragma once

#include "geometry/pockets/pocket_tree.h"

#include <cstdint>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// Air that a rising liquid cannot drive out of each pocket, below the pocket's brim, in mm3.
///
/// Bells are the pockets of the surface turned over. One whose lip lies in a pocket below its brim
/// is cut off when the liquid reaches the lip, and keeps the air above it (as if that were not
/// compressed), unless it is open to the outside or another pocket too. `pocket_of` tells each
/// basin's pocket or never. `surface` is turned over meanwhile, as a copy would be large.
std::vector<double> trapped_air(AirSurface& surface, const AirTree& tree,
                                std::span<const std::uint32_t> pocket_of,
                                std::span<const double> brim_mm);

}  // namespace brimwright::geometry
