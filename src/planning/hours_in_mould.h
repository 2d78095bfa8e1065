#pragma once

#include "planning/run.h"

#include <chrono>
#include <optional>

namespace brimwright::planning {

/// How long a cast stays in its mould: the longest that one of the formulas says, else what the
/// mould's file says; nothing where neither does.
std::optional<std::chrono::minutes> hours_in_mould(const Run& run);

}  // namespace brimwright::planning
