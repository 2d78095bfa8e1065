#pragma once

#include "chemistry/batter_density.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>

namespace brimwright::planning {

/// What is known of the visible part of one topping: above its foot, each way that the run gives.
VisibleTopping visible_topping(const Pipe& pipe);

/// What is the same for each topping, however many are piped.
struct Topping {
  VisibleTopping visible;
  Volume in_headspace_each;
  chemistry::Proportions per_fat;
  chemistry::BatterDensity plain;
};
/// The topping of pieces whose headspace is `headspace`. It is kept as volume: its mass
/// follows the whip. UserError where a weigh-cup reads heavier than the unwhipped batter.
Topping topping_of(const Run& run, Volume headspace);

/// Masses, bag loads and time of one whipping for `casts`, to try how large it may be: without
/// readings and remarks. Loads are as many as hold all that is weighed, with what each change of
/// bag leaves behind: one figure for the losses and for the time.
PipeTally trial_whipping_of(const Run& run, const Topping& topping, std::int64_t casts);
/// Adds to a trial what the weigh-cup's readings mean, the lye by the spoon, and remarks.
void tell_whipping(PipeTally& whipping, const Run& run, const Topping& topping);

}  // namespace brimwright::planning
