#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <cstdint>
#include <span>

namespace brimwright::geometry {

/// How high the wall goes on round a pocket that is full to its brim.
struct PocketRim {
  double highest_mm = 0;
  double usual_mm = 0;  // half of the way round is at least as high
};

/// Climbs from the liquid's outline at `brim_mm` straight up the wall, from facet to facet, to
/// where it turns level or down. A level rim is at the brim all round. `facets` are the pocket's.
PocketRim rim_of(const AirSurface& surface, std::span<const std::uint32_t> facets, double brim_mm);

}  // namespace brimwright::geometry
