#pragma once

#include "planning/run.h"
#include "units/fields.h"

#include <optional>

namespace brimwright::runs {

/// A run's "lye_pot": { "shared": true, "pot_tare": "412 g" }. Nothing when it is absent or not
/// shared. UserError for a tare without a pot to share.
std::optional<planning::PotQuestion> read_lye_pot(const Fields& run);

}  // namespace brimwright::runs
