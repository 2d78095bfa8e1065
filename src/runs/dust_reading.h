#pragma once

#include "planning/run.h"
#include "units/fields.h"

namespace brimwright::runs {

/// One entry of a run's section "dust".
planning::Dusting read_dusting(const Fields& fields);

}  // namespace brimwright::runs
