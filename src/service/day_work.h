#pragma once

#include "days/work.h"
#include "moulds/library.h"
#include "reports/days_report.h"
#include "runs/days_reading.h"
#include "service/day_files.h"
#include "service/tray_fills.h"

#include <map>
#include <string>
#include <vector>

namespace brimwright::service {

/// The studio and the work in plain numbers, and what is to be noted about them.
struct DayWork {
  days::Studio studio;
  std::vector<days::Delivery> deliveries;
  std::vector<Remark> notes;
  std::map<std::string, std::size_t> moulds;  // the studio's, by file
  Trays trays;                                // the studio's
};

/// UserError where the times of a line are wanting (line_times.h), and where two runs count the
/// same mould in two ways.
DayWork day_work(const std::vector<DayFile>& files, const runs::StudioDays& studio,
                 const moulds::Library& library);

}  // namespace brimwright::service
