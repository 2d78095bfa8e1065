#pragma once

#include "reports/days_report.h"
#include "service/day_work.h"

#include <cstdint>
#include <vector>

namespace brimwright::service {

/// What each limit, a little wider, would do, found by planning it: one more mould of a kind, an
/// hour more on each making day, one more making day, a pot, a bowl, room on the rack, everything
/// bought already, casting as early as need be. Only what helps: what keeps the due days, or begins
/// later, or is ready earlier than `report` says. The most helpful first.
std::vector<reports::DaysReport::WhatIf> what_ifs(const reports::DaysReport& report,
                                                  const std::vector<DayFile>& files,
                                                  const DayWork& work,
                                                  const runs::StudioDays& studio,
                                                  std::int64_t most_looks);

}  // namespace brimwright::service
