#pragma once

#include "planning/batch_trials.h"
#include "planning/measured.h"
#include "planning/run.h"
#include "units/user_error.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// A run that is poured together with others, and how many pieces of it are wanted.
struct TogetherLine {
  const Run& run;
  const Measured& measured;
  BatchTrials& trials;
  std::int64_t sell = 0;
  Place where;  // of its word
};

/// UserError at the first line whose base cannot be mixed as one with those before it: what differs
/// in what belongs to the whole batter, or what only a run by itself can do.
void refuse_other_base(const std::vector<TogetherLine>& lines);

/// The base that they share as a run of its own, after refuse_other_base().
Run shared_base(const std::vector<TogetherLine>& lines);

}  // namespace brimwright::planning
