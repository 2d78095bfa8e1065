#pragma once

#include "moulds/library.h"
#include "runs/days_reading.h"
#include "service/day_files.h"
#include "service/day_numbers.h"

#include <vector>

namespace brimwright::service {

/// UserError where the times of a line are wanting (line_times.h), and where two runs count the
/// same mould in two ways.
DayWork day_work(const std::vector<DayFile>& files, const runs::StudioDays& studio,
                 const moulds::Library& library);

}  // namespace brimwright::service
