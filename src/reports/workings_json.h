#pragma once

#include "units/working.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace brimwright::reports {

/// A list of workings as answers hold it under "how".
nlohmann::ordered_json how_json(const std::vector<Working>& workings);

}  // namespace brimwright::reports
