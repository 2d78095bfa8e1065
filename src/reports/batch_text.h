#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <string>
#include <vector>

namespace brimwright::reports {

/// The column of one batch, headed where there are several: its base, its whippings, its shared lye
/// and powders.
std::string batch_text(const planning::Batch& batch, const planning::Plan& plan,
                       const planning::Run& run);

/// "24 pieces", "24 pieces in 2 loaves"
std::string batch_size(const planning::Batch& batch, const planning::Pieces& pieces);

/// Powders, for one batch or for all; nothing where there are none.
std::string dust_text(const std::vector<planning::DustTally>& dusts, const planning::Run& run);

}  // namespace brimwright::reports
