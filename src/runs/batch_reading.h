#pragma once

#include "planning/run.h"
#include "units/fields.h"

namespace brimwright::runs {

/// A run's "pots": what the base is mixed and a lye is made in, brimful.
planning::Pots read_pots(const Fields& run);

/// A run's "batch": how she wants it divided. UserError where it asks for whippings of a topping
/// that is not there.
planning::BatchWish read_batch_wish(const Fields& run, bool pipes);

}  // namespace brimwright::runs
