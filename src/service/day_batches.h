#pragma once

#include "days/work.h"
#include "runs/days_reading.h"
#include "service/day_files.h"
#include "service/tray_fills.h"

#include <cstddef>
#include <vector>

namespace brimwright::service {

/// The batches of a plan of one run, which fills moulds of that kind.
std::vector<days::Batch> day_batches(const planning::Run& run, const planning::Plan& plan,
                                     std::size_t mould, const runs::StudioDays& studio,
                                     Trays& trays);

/// The batches of a line; `moulds` are those of its parts.
std::vector<days::Batch> day_batches(const DayLine& line, const std::vector<std::size_t>& moulds,
                                     const runs::StudioDays& studio, Trays& trays);

}  // namespace brimwright::service
