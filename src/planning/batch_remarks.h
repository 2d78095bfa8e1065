#pragma once

#include "planning/cautions.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::planning {

// What is to be said of the batches' batters, each thing once. Where batches of different sizes
// differ in it, it names those that it is about.

struct BatchRemark : Remark {
  std::optional<std::int64_t> pieces = {};  // of the batches it is about, if not about all
};

enum class Saying { alarms, remarks, doubts };
std::vector<BatchRemark> of_batter(const Plan& plan, BatterRole batter, Saying saying);
std::vector<BatchRemark> of_lye_pots(const Plan& plan);
/// Alarms of what a batter's shares of the pots make of it.
std::vector<BatchRemark> of_pot_shares(const Plan& plan, BatterRole batter);
/// Of the lyes that are made, the shared one instead of each batter's own, and of the pours.
std::vector<BatchRemark> of_heat(const Plan& plan);

/// The run's batches: pieces to spare, and what one more or one fewer would change.
std::vector<Remark> of_counts(const Plan& plan);

}  // namespace brimwright::planning
