#pragma once

#include "planning/plan.h"
#include "planning/run.h"

namespace brimwright::planning {

/// What is known of the visible part of one topping: above its foot, each way that the run gives.
VisibleTopping visible_topping(const Pipe& pipe);

/// Volumes, masses and bag loads of the topping for pieces whose recess below the brim is
/// `headspace`. Topping is kept as volume: its mass follows the whip.
///
/// UserError where a weigh-cup reads heavier than the unwhipped batter.
PipeTally pipe_tally(const Run& run, const Pieces& pieces, Volume headspace);

}  // namespace brimwright::planning
