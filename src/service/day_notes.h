#pragma once

#include "runs/days_reading.h"
#include "service/day_files.h"
#include "service/day_numbers.h"

#include <vector>

namespace brimwright::service {

/// Notes what the studio does not say of its days, and what follows from that.
void note_what_is_missing(DayWork& work, const runs::StudioDays& studio,
                          const std::vector<DayFile>& files);

}  // namespace brimwright::service
