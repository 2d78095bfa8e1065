#pragma once

#include "moulds/library.h"
#include "reports/days_report.h"
#include "runs/studio_file.h"
#include "service/day_files.h"
#include "service/day_numbers.h"

#include <vector>

namespace brimwright::service {

/// What of each batch's base is left over, beyond pieces and planned losses, fills whole cavities
/// of: other moulds that the studio says it owns, to the brim, trays that are cast in left out.
/// Never more cavities than are free on the day of that batch, with what was offered before still
/// in them.
std::vector<reports::DaysReport::Extra> extras(const reports::DaysReport& report,
                                               const std::vector<DayFile>& files,
                                               const DayWork& work, const runs::Studio& studio,
                                               const moulds::Library& library);

}  // namespace brimwright::service
