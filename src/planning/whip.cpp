#include "planning/whip.h"

#include "chemistry/batter_density.h"
#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {

std::int64_t casts_from(Mass usable, Volume each, const WeighCup& cup) {
  return std::max<std::int64_t>(0, whole_down(usable / (each * cup.density())));
}

std::vector<WhipReading> whip_table(Mass usable, Volume each, const WeighCup& planned,
                                    Density plain) {
  std::vector<WhipReading> table;
  // Fine near the plan, where most readings fall.
  for (const double off : {-0.15, -0.10, -0.075, -0.05, -0.03, -0.02, -0.01, 0.0, 0.01, 0.02, 0.03,
                           0.05, 0.075, 0.10, 0.15}) {
    WeighCup cup = planned;
    if (off != 0) cup.net = rounded_nearest((1 + off) * planned.net, 1 * gram);
    if ((off < 0 && cup.net >= planned.net) || (off > 0 && cup.net <= planned.net)) continue;
    const bool is_new = table.empty() || cup.net > table.back().net;
    // A cup heavier than the plain batter holds no whip.
    if (!is_new || !(cup.net > Mass{}) || cup.density() > plain) continue;
    table.push_back({.net = cup.net,
                     .density = cup.density(),
                     .overrun = plain / cup.density() - 1,
                     .casts = casts_from(usable, each, cup),
                     .is_planned = off == 0});
  }
  return table;
}

std::optional<SpoonedLye> spooned_lye(const Pipe& pipe, const Weighing& weighing) {
  if (!pipe.lye_spoon) return std::nullopt;
  std::vector<Mass> alkalis(pipe.formula.alkalis.size());
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.role == Role::alkali) alkalis[ingredient.index] = ingredient.weighed;
  const Volume lye =
      chemistry::lye_volume(pipe.formula, alkalis, weighing.water - weighing.water_in_solutions);
  SpoonedLye spooned;
  spooned.spoonfuls = whole_up(lye / pipe.lye_spoon->holds);
  spooned.each = pipe.lye_spoon->time_between;
  spooned.altogether = spooned.spoonfuls * spooned.each;
  return spooned;
}

}  // namespace brimwright::planning
