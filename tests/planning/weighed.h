#pragma once

#include "chemistry/proportions.h"
#include "planning/weighing_remarks.h"

namespace brimwright::planning {

/// `formula` on the scales, with all that is to be said of it.
inline Weighing weighing_of(const chemistry::Formula& formula, Mass to_make, const Scales& scales) {
  const auto per_fat = chemistry::proportions(formula);
  Weighing weighing = trial_weighing_of(formula, per_fat, to_make, scales);
  remark_on(weighing, formula, per_fat, scales);
  return weighing;
}

}  // namespace brimwright::planning
