#include "planning/shared_pot.h"

#include "planning/bench_heat.h"

#include <algorithm>
#include <cstdint>
#include <string>

namespace brimwright::planning {

chemistry::HeatQuestion temperatures_of_pot(const Run& run) {
  auto pot = run.pour.temperatures.value_or(chemistry::HeatQuestion{});
  const auto topping = run.pipe->temperatures.value_or(chemistry::HeatQuestion{});
  const auto warmer = [](auto& one, const auto& other) { one = std::max(one, other); };
  warmer(pot.room_at, topping.room_at);
  warmer(pot.water_at, topping.water_at);
  pot.ice_share = std::min(pot.ice_share, topping.ice_share);
  if (!pot.lye_used_at || (topping.lye_used_at && *topping.lye_used_at < *pot.lye_used_at)) {
    pot.lye_used_at = topping.lye_used_at;
    pot.cooled_in = topping.cooled_in;
  }
  return pot;
}

std::vector<PotBatter> batters_of_pot(const Run& run, const Batch& batch) {
  std::vector<PotBatter> batters{{run.pour.formula, batch.pour.batter.weighing, ""}};
  std::int64_t number = 0;
  for (const Whipping& whipping : batch.whippings)
    for (std::int64_t i = 0; i < whipping.count; ++i) {
      ++number;
      const std::string which = run.batch.whippings == 1 ? ""
                                                         : run.pipe->formula.name + ", whipping " +
                                                               std::to_string(number) + " of " +
                                                               std::to_string(run.batch.whippings);
      batters.push_back({run.pipe->formula, whipping.pipe.batter.weighing, which});
    }
  return batters;
}

void share_lye(Batch& batch, const Run& run) {
  batch.lye_pot = lye_pot(batters_of_pot(run, batch), run.scales, *run.lye_pot);
  batch.pot_heat = heat_of_pot(temperatures_of_pot(run), run.pour.formula, *batch.lye_pot);
}

}  // namespace brimwright::planning
