#pragma once

#include "planning/weighing.h"

namespace brimwright::planning {

/// What `part` of a batter, 0 to 1, holds of all that was weighed for it: masses in proportion, on
/// no scale's step, and the superfat of the whole. Its alarms go with it; remarks and doubts, which
/// are about the weighing, stay with the whole.
Weighing part_of(const Weighing& whole, double part);

}  // namespace brimwright::planning
