#pragma once

#include "days/work.h"
#include "reports/day_lack.h"
#include "service/tray_fills.h"
#include "units/remark.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace brimwright::service {

/// The studio and the work in plain numbers, and what is to be noted about them.
struct DayWork {
  days::Studio studio;
  std::vector<days::Delivery> deliveries;
  std::vector<Remark> notes;
  std::vector<reports::DayLack> lacks;
  std::map<std::string, std::size_t> moulds;  // the studio's, by file
  Trays trays;                                // the studio's
};

}  // namespace brimwright::service
