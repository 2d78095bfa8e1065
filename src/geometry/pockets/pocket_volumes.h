#pragma once

#include "geometry/pockets/pocket_tree.h"

#include <cstdint>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// For each group of basins the volume of its air below the group's level: facets belong to the
/// basin of their lowest corner, basins to `group_of` (AirTree::never: to none).
std::vector<double> volumes_below(const AirSurface& surface, const AirTree& tree,
                                  std::span<const std::uint32_t> group_of,
                                  std::span<const double> level_mm);

/// The facets of each group, in order.
std::vector<std::vector<std::uint32_t>> facets_of_groups(const AirTree& tree,
                                                         std::span<const std::uint32_t> group_of,
                                                         std::size_t groups);

}  // namespace brimwright::geometry
