#pragma once

#include "planning/plan.h"
#include "planning/run.h"

namespace brimwright::planning {

/// Visible volume of one topping: mean trial mass / the trial whip's density, or envelope x
/// solidity (cone pi d^2 h / 12; dome, half an ellipsoid, pi d^2 h / 6).
Volume visible_volume(const Pipe& pipe);

/// Volumes, masses and bag loads of the topping for pieces whose recess below the brim is
/// `headspace`. Topping is kept as volume: its mass follows the whip.
PipeTally pipe_tally(const Run& run, const Pieces& pieces, Volume headspace);

}  // namespace brimwright::planning
