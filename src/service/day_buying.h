#pragma once

#include "reports/buying_report.h"
#include "reports/days_report.h"
#include "runs/packaging_reading.h"
#include "runs/studio_file.h"
#include "runs/supplies.h"
#include "service/day_files.h"

#include <vector>

namespace brimwright::service {

/// What of `supplies`, the packs and the shelf, has to be bought for all of it, packed by
/// `packaging` where a run says nothing of its own, with the leads put into `files` and what is to
/// be noted into `notes`: a lead time that is not known counts as none, and is told.
reports::Buying buying_for_days(std::vector<DayFile>& files, const runs::Studio& studio,
                                runs::Supplies supplies, const runs::PackagingList& packaging,
                                std::vector<Remark>& notes);

/// From whom what is ordered, and by when, for that schedule.
std::vector<reports::DaysReport::Ordering> orderings(const reports::Buying& buying,
                                                     const runs::PackagingList& packaging,
                                                     const std::vector<DayFile>& files,
                                                     const reports::DaysReport& report);

}  // namespace brimwright::service
