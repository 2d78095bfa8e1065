#pragma once

#include "days/schedule.h"
#include "runs/studio_file.h"
#include "service/day_work.h"

#include <vector>

namespace brimwright::service {

/// UserError where a batch of `work` fits on no day, were it the only one: with what stands against
/// it, found by leaving that out, at the key of the `studio` that would let it be made, or else at
/// the size of its run's batches.
void refuse_never_made(const DayWork& work, const std::vector<DayFile>& files,
                       const runs::Studio& studio, days::Day from);

}  // namespace brimwright::service
