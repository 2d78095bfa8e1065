#pragma once

#include "reports/vessel.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace brimwright::reports {

/// `json` of a batch with "weigh_out" and its "mark", which is the same for the same vessels and
/// rows, to the last word, and for no others.
nlohmann::ordered_json with_weigh_out(nlohmann::ordered_json json,
                                      const std::vector<Vessel>& vessels);

}  // namespace brimwright::reports
