#pragma once

#include "planning/batch_trials.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::planning {

/// How full a pot may be when a batter is mixed in it, and a jug in which lye is made: room to
/// stir and to foam. Common practice, no source.
inline constexpr Share fullest_pot = Share::of_one(2.0 / 3);
inline constexpr Share fullest_lye_jug = Share::of_one(0.5);

/// What one batch may be. Every limit is found by weighing batches of that size and of one cast
/// more, never by proportion.
struct BatchLimits {
  std::int64_t least = 1, most = 0;  // casts of a batch
  std::vector<Limit> of_batch;       // all of them, in casts of a batch
  std::vector<Limit> of_whipping;    // those of bowl, time and whisk, in casts of one whipping
  std::string least_because;         // in words, where `least` is above one
};

/// The limits to batches of `run`, whose moulds have `cavities`: free cavities, her own wish, the
/// pot two thirds full of base, the jug half full of lye, the bowl 60 % full of topping and the
/// open time; at the other end what the whisk catches, what the scales can weigh and what comes out
/// above zero superfat. `pieces` are the run's; its casts are where the trials begin.
///
/// UserError where not even one cast is within a limit, or where the most is less than the least:
/// with what would make it fit, rounded up so that it does.
BatchLimits limits_of(const Run& run, const Pieces& pieces, BatchTrials& trials);

/// The same of what stays the run's own where its base is mixed with others': cavities, and what
/// its topping asks for, whose lye is made in the jug too. The wish and the pot are the base's.
BatchLimits own_limits_of(const Run& run, const Pieces& pieces, BatchTrials& trials);

/// How full `base` of that density makes the run's pot, or its lye the jug, whichever is fuller: 1
/// is as full as it may be.
double filled_by(const Run& run, const Weighing& base, Density density);

}  // namespace brimwright::planning
