#pragma once

#include "geometry/packing/packing.h"
#include "planning/memo.h"
#include "units/quantity.h"

#include <vector>

namespace brimwright::planning {

/// What of measuring a piece takes tenths of a second or more, for a program that is asked of the
/// same shapes again and again. May be used by several threads at once.
struct MeasureMemory {
  Memo<geometry::Packing> packings{64u << 20};
  Memo<std::vector<Area>> exposed{64u << 20};
};

}  // namespace brimwright::planning
