#pragma once

#include "planning/cut.h"
#include "units/fields.h"

namespace brimwright::runs {

/// A run's "cut": the bar's size and the kerf always, the rest where it is not nothing. UserError
/// with the field for anything missing, unknown or contradictory.
planning::Cut read_cut(const Fields& cut);

}  // namespace brimwright::runs
