#pragma once

#include "days/schedule.h"
#include "service/day_work.h"

#include <vector>

namespace brimwright::service {

/// UserError where a batch of `work` fits on no day, were it the only one: with what stands against
/// it, found by leaving that out.
void refuse_never_made(const DayWork& work, const std::vector<DayFile>& files, days::Day from);

}  // namespace brimwright::service
