#include "planning/share_superfat.h"

#include "units/weight_text.h"

#include <cstddef>

namespace brimwright::planning {

chemistry::EffectiveSuperfat share_superfat(const chemistry::Formula& formula,
                                            const Weighing& weighing,
                                            const std::vector<WeighedPart>& alkalis,
                                            const WeighedPart& share, const WeighedPart& pot) {
  Reacting all = reacting(formula, weighing.ingredients);
  const double of_pot = share.mass / pot.mass;
  all.alkalis.clear();
  for (std::size_t k = 0; k < alkalis.size(); ++k) {
    const auto& alkali = formula.alkalis[k];
    all.alkalis.push_back({alkali.alkali, alkali.purity, alkali.purity_low, alkali.purity_high,
                           alkalis[k].mass * of_pot, alkalis[k].step * of_pot,
                           static_cast<double>(alkalis[k].weighings)});
  }
  if (!(share.mass > Mass{}))
    return chemistry::effective_superfat(all.fats, all.alkalis, all.acids, all.blends);
  return chemistry::effective_superfat(all.fats, all.alkalis, all.acids, all.blends,
                                       {{"the scale's step of " + on_scale(share.step, share.step) +
                                             " for its share of the lye solution",
                                         Share::of_one(share.step / 2 / share.mass)},
                                        {"the scale's step of " + on_scale(pot.step, pot.step) +
                                             " when the lye solution is topped up to its weight",
                                         Share::of_one(pot.step / 2 / pot.mass)}});
}

}  // namespace brimwright::planning
