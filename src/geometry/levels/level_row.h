#pragma once

#include "units/quantity.h"

namespace brimwright::geometry {

/// One line of a dip-stick table.
struct LevelRow {
  Length depth;   // above the lowest point, as asked for
  Volume volume;  // below it
  Area surface;   // the free surface just above it, but at the brim just below it
};

}  // namespace brimwright::geometry
