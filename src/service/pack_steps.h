#pragma once

#include "reports/quote_report.h"
#include "runs/supplies.h"
#include "service/purchasing.h"

#include <cstdint>
#include <map>
#include <vector>

namespace brimwright::service {

/// Where another pack begins: `used` is what so many pieces take, of each number that can be made.
///
/// Of each material that has packs the least is found, exactly, that whole packs of it come to
/// which cover the need less the shelf; postage is left out, and so no material waits for another.
/// A step is where that sum grows from one number to the next. Where it was too much work to find,
/// the material is named with the numbers at which a step may be missing.
reports::PackSteps pack_steps(const std::map<std::int64_t, Materials>& used,
                              const runs::Supplies& supplies,
                              const std::vector<const planning::Run*>& runs);

}  // namespace brimwright::service
