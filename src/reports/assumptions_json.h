#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <nlohmann/json_fwd.hpp>

namespace brimwright::reports {

/// What a plan takes for granted and a batch can tell otherwise: what a cavity takes, densities,
/// losses, topping and cure, as measured and as used. It is kept with the plan of each batch.
nlohmann::ordered_json assumptions_json(const planning::Run& run, const planning::Plan& plan);

}  // namespace brimwright::reports
