#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace brimwright::geometry {

/// A patch of wall that hangs together and leans over what is below it.
struct LeaningPatch {
  std::array<double, 3> at_mm;  // the middle of its largest facet
  double area_mm2;
};

/// What the wall of one pocket, `facets`, is like below the brim.
struct PocketWall {
  std::array<double, 2> middle_mm;    // of its box, seen from above
  double roofed_mm2 = 0;              // area of all that faces down, seen from above
  std::vector<LeaningPatch> leaning;  // more than half a degree, the largest first
};

PocketWall wall_of(const AirSurface& surface, std::span<const std::uint32_t> facets,
                   double brim_mm);

}  // namespace brimwright::geometry
