#pragma once

#include "planning/run.h"
#include "units/fields.h"

namespace brimwright::runs {

/// A run's "scales": "large" and "fine", each with what it "reads" and "holds". UserError where the
/// fine one reads coarser than the large one, or where what they hold has changed places.
planning::Scales read_scales(const Fields& run);

}  // namespace brimwright::runs
