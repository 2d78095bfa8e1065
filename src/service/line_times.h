#pragma once

#include "days/work.h"
#include "service/day_files.h"

namespace brimwright::service {

/// How long a line's casts stay in their moulds and wait for the knife, and how long they cure: of
/// several that are poured together, as long as the one that takes longest.
///
/// UserError where a formula has no cure, where neither it nor the mould says how long a soap stays
/// in the mould, and where that and the time for the knife leave no day.
void set_times(days::Line& line, const DayLine& of);

}  // namespace brimwright::service
