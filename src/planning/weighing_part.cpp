#include "planning/weighing_part.h"

namespace brimwright::planning {

Weighing part_of(const Weighing& whole, double part) {
  Weighing weighing = whole;
  // All members are named, so that one more asks here what becomes of it.
  auto& [ingredients, batter, fats, naoh, koh, water, water_in_liquids, water_in_solutions,
         water_in_acids, lye_strength, pot_strength, water_to_alkali, water_of_fats, aim, superfat,
         alarms, remarks, doubts] = weighing;
  for (Ingredient& one : ingredients) {
    for (Mass* mass : {&one.exact, &one.weighed, &one.set_aside}) *mass = part * *mass;
    if (one.spoonful) one.spoonful = part * *one.spoonful;
  }
  for (Mass* mass : {&batter, &fats, &naoh, &koh, &water, &water_in_liquids, &water_in_solutions,
                     &water_in_acids})
    *mass = part * *mass;
  remarks.clear();
  doubts.clear();
  return weighing;
}

}  // namespace brimwright::planning
