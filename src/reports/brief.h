#pragma once

#include "planning/run.h"
#include "planning/tally.h"

#include <string>

namespace brimwright::reports {

/// What a screen shows of text at once; a batch's part of a brief is no longer.
inline constexpr int screen_lines = 24;

/// The plan on a screen: all its dangers first, then what to weigh, batch by batch, in the unit
/// that the scale shows, and how deep and how much each piece gets; last what is not shown here. At
/// most 80 columns. A run of one batter in one batch takes one screen beside its dangers.
std::string plan_brief(const planning::Run& run, const planning::Plan& plan);

}  // namespace brimwright::reports
