#include "planning/weighing_part.h"

namespace brimwright::planning {

Weighing part_of(const Weighing& whole, double part) {
  Weighing weighing = whole;
  for (Ingredient& one : weighing.ingredients) {
    for (Mass* mass : {&one.exact, &one.weighed, &one.set_aside}) *mass = part * *mass;
    if (one.spoonful) one.spoonful = part * *one.spoonful;
  }
  for (Mass* mass : {&weighing.batter, &weighing.fats, &weighing.naoh, &weighing.koh,
                     &weighing.water, &weighing.water_in_liquids, &weighing.water_in_acids})
    *mass = part * *mass;
  weighing.remarks.clear();
  weighing.doubts.clear();
  return weighing;
}

}  // namespace brimwright::planning
