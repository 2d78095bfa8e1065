#pragma once

#include "planning/blanks.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace brimwright::reports {

/// What is to be filled in of a batch, as it stands in the plan's answer.
nlohmann::ordered_json blanks_json(const std::vector<planning::Blank>& blanks);

}  // namespace brimwright::reports
