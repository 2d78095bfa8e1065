#pragma once

#include "planning/tally.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>

namespace brimwright::reports {

/// How warm a batter's lye and pour get; empty without what the bench says.
std::string heat_text(const chemistry::HeatFindings& heat);
nlohmann::ordered_json heat_json(const chemistry::HeatFindings& heat);

/// One pot of lye: what goes in, and each batter's share with its superfat.
std::string pot_text(const planning::LyePot& pot,
                     const std::optional<chemistry::HeatFindings>& heat);
nlohmann::ordered_json pot_json(const planning::LyePot& pot,
                                const std::optional<chemistry::HeatFindings>& heat);

/// The one pot of lye that a batch's batters share; empty where they do not.
std::string lye_pot_text(const planning::Batch& batch);
/// The same; null where they do not.
nlohmann::ordered_json lye_pot_json(const planning::Batch& batch);

}  // namespace brimwright::reports
