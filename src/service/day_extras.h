#pragma once

#include "reports/days_report.h"
#include "runs/studio_file.h"
#include "service/day_files.h"

#include <vector>

namespace brimwright::service {

/// What of each batch's base is left over, beyond pieces and planned losses, fills whole cavities
/// of: other moulds that the studio says it owns, to the brim. Never more cavities than she owns.
std::vector<reports::DaysReport::Extra> extras(const std::vector<DayFile>& files,
                                               const runs::Studio& studio,
                                               const moulds::Library& library);

}  // namespace brimwright::service
