#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <cstdint>
#include <optional>
#include <span>

namespace brimwright::geometry {

/// Whether a level patch of surface that has no lower neighbour carries the air (a floor), rather
/// than hangs in it with air below (a tip). `plateau` holds all vertices of the patch.
bool is_floor(const AirSurface& surface, std::span<const std::uint32_t> plateau);

/// Whether there is air over a vertex without a lower neighbour, which all those facets are at;
/// nothing where none of them has an area to be seen from above.
///
/// Seen from a minimum all edges rise or run level, so what is nearest to straight down is one of
/// them, the flattest; of its two facets the one nearer to straight down is the one whose normal is
/// steeper, and what lies on that facet's lower side lies below the minimum.
std::optional<bool> carries_air(const TriangleMesh& mesh, std::uint32_t vertex,
                                std::span<const std::uint32_t> facets_at_it);

}  // namespace brimwright::geometry
