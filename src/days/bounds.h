#pragma once

#include "days/problem.h"

namespace brimwright::days {

/// Whether it shows, without a look at how batches share the days, that not all can be made in
/// time: the hours or vessels up to some day are too few for what must be poured by then, or a
/// line's moulds or the rack, were it alone.
bool is_too_much(const Problem& problem);

}  // namespace brimwright::days
