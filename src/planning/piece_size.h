#pragma once

#include "units/quantity.h"

namespace brimwright::planning {

/// The box that a piece just fits, standing as it was poured.
struct PieceSize {
  Length width, depth, height;  // along x, y and z
};

}  // namespace brimwright::planning
