#pragma once

#include "planning/tally.h"

#include <string>

namespace brimwright::reports {

/// "A bar weighs 95.1 g fresh on average, from 92.4 g to 98.0 g.": by what is really in each, the
/// least rounded down and the greatest up.
std::string bar_weights(const planning::PieceTally& piece);

}  // namespace brimwright::reports
