#pragma once

#include "geometry/pockets/pocket_surface.h"

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace brimwright::geometry {

// A mould's wall gives by more than this: common practice, no source. Walls meant to be upright
// lean by less, as rounded by the file.
inline constexpr double least_lean = 0.0087;  // sine of half a degree

// Roofs that cover less of a pocket than this can keep no more than this share of it empty.
inline constexpr double least_roof = 1e-6;

/// A patch of wall that hangs together and leans over what is below it.
struct LeaningPatch {
  Point at_mm;  // the middle of its largest facet
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
