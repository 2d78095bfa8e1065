#pragma once

#include "chemistry/formula.h"
#include "planning/run.h"
#include "planning/tally.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// A batter of a plan with its formula. It refers to both.
struct PlannedBatter {
  std::string name;  // "Base", "Topping"; "Batter" where there is but one
  const chemistry::Formula& formula;
  const BatterTally& tally;
  double of_cast;  // what of one cast's a piece has
  bool is_topping = false;
};

/// The base, and the topping where there is one, each summed over the batches.
std::vector<PlannedBatter> batters_of(const Run& run, const Plan& plan);

}  // namespace brimwright::planning
