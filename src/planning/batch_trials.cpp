#include "planning/batch_trials.h"

namespace brimwright::planning {

Mass base_to_make(const Run& run, const PourTally& shape, std::int64_t casts) {
  const PourLosses& losses = run.pour.losses;
  const Mass in_pieces = static_cast<double>(casts) * shape.batter.mass_each;
  return in_pieces * (1 + losses.overpour.of_one()) + losses.pot + losses.jugs + losses.test_piece;
}

std::vector<std::int64_t> casts_of_whippings(std::int64_t casts, std::int64_t whippings) {
  std::vector<std::int64_t> each;
  for (std::int64_t i = 0; i < whippings; ++i)
    each.push_back(casts / whippings + (i < casts % whippings ? 1 : 0));
  return each;
}

const Weighing& BatchTrials::base(std::int64_t casts) {
  const auto known = bases_.find(casts);
  if (known != bases_.end()) return known->second;
  return bases_
      .emplace(casts, trial_weighing_of(run_.pour.formula, measured_.pour.batter.per_fat,
                                        base_to_make(run_, measured_.pour, casts), run_.scales))
      .first->second;
}

const PipeTally& BatchTrials::whipping(std::int64_t casts) {
  const auto known = whippings_.find(casts);
  if (known != whippings_.end()) return known->second;
  return whippings_.emplace(casts, trial_whipping_of(run_, topping(), casts)).first->second;
}

}  // namespace brimwright::planning
