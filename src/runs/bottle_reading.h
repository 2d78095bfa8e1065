#pragma once

#include "planning/run.h"
#include "units/fields.h"

#include <vector>

namespace brimwright::runs {

/// A run's "bottles": [ { "name", "holds", "shared": "by rate" } ]. "half and half" is read too, so
/// that the plan can refuse it with figures.
std::vector<planning::Bottle> read_bottles(const Fields& run);

}  // namespace brimwright::runs
