#include "planning/batters.h"

#include "planning/piece_tally.h"

namespace brimwright::planning {

std::vector<PlannedBatter> batters_of(const Run& run, const Plan& plan) {
  std::vector<PlannedBatter> batters{{plan.pipe ? "Base" : "Batter", run.pour.formula,
                                      plan.pour.batter, base_in_a_piece(plan.cut)}};
  if (plan.pipe)
    batters.push_back(
        {"Topping", run.pipe->formula, plan.pipe->batter, topping_in_a_piece(plan.cut), true});
  return batters;
}

}  // namespace brimwright::planning
