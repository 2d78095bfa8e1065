#pragma once

#include "units/quantity.h"

#include <functional>

namespace brimwright::geometry {

/// A slice of a solid between two depths whose section is known in closed form.
struct LevelBand {
  Length bottom, top;                            // depths; each band starts where the last ends
  std::function<Area(Length depth)> section;     // free surface at `depth`, bottom <= depth <= top
  std::function<Volume(Length depth)> contents;  // volume between `bottom` and `depth`, increasing
};

}  // namespace brimwright::geometry
