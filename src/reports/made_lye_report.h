#pragma once

#include "planning/weighed_lye.h"

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <vector>

namespace brimwright::reports {

/// Lye already weighed, for people: what comes out of it, and what mends it; empty for none. Stands
/// before the plan.
std::string made_lye_text(const std::vector<planning::MadeLye>& made);

/// The same for programs, an entry for each batter.
nlohmann::ordered_json made_lye_json(const std::vector<planning::MadeLye>& made);

}  // namespace brimwright::reports
