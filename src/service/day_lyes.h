#pragma once

#include "reports/days_report.h"
#include "reports/lye_of_day.h"
#include "runs/days_reading.h"
#include "service/day_files.h"
#include "service/day_numbers.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::service {

/// Where the studio makes one lye for the batches of a day, tells the lines whose bases take the
/// same, and how many batches a pot does for. That a line's batches keep lyes of their own is
/// noted.
void share_lyes(DayWork& work, const std::vector<DayFile>& files, const runs::StudioDays& studio);

/// Where the studio makes one lye for several batches of a day: whether those of this run may be
/// among them.
std::optional<reports::LyeOfDay> lye_of_day(const planning::Run& run, const planning::Plan& plan,
                                            const runs::Studio& studio);

/// For how many batches of that plan a pot does, at least one.
int batches_in_pot(const planning::Run& run, const planning::Plan& plan,
                   const runs::OneLye& one_lye);

/// The pots of lye of a schedule, weighed and past the gate: of its bases, and where toppings of
/// these batches take the same lye, one of theirs. UserError where one cannot be shared safely.
std::vector<reports::DaysReport::Lye> day_lyes(const reports::DaysReport& report,
                                               const std::vector<DayFile>& files,
                                               const runs::OneLye& one_lye);

}  // namespace brimwright::service
