#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <cstdint>
#include <span>

namespace brimwright::geometry {

/// Whether a level patch of surface that has no lower neighbour carries the air (a floor), rather
/// than hangs in it with air below (a tip). `plateau` holds all vertices of the patch.
bool is_floor(const AirSurface& surface, std::span<const std::uint32_t> plateau);

}  // namespace brimwright::geometry
