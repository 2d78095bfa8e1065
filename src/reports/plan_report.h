#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "planning/weighed_lye.h"
#include "reports/label_report.h"
#include "reports/lye_of_day.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::reports {

/// The plan for people: dangers first, then the numbers to weigh, volumes, cost, cautions (those
/// about this very batch before those of any) and first aid last; at most 80 columns, nothing by
/// colour. Its label carries `codes`.
std::string plan_text(const planning::Run& run, const planning::Plan& plan,
                      const BatchCodes& codes = {});

/// The plan as one JSON document, schema brimwright.plan/1. Masses are those of the text, to the
/// digit. `made` is told under "made_lye", where there is any, and `lye_of_day` beside the lye.
std::string plan_json(const planning::Run& run, const planning::Plan& plan,
                      const std::vector<planning::MadeLye>& made = {}, const BatchCodes& codes = {},
                      const std::optional<LyeOfDay>& lye_of_day = {});

/// The same of a line that is poured together with others, as it is kept with its batch: what is
/// weighed and noted of its base is with that.
std::string line_json(const planning::Run& run, const planning::Plan& plan);

}  // namespace brimwright::reports
