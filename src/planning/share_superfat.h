#pragma once

#include "chemistry/formula.h"
#include "chemistry/superfat.h"
#include "planning/weighing.h"
#include "units/quantity.h"

#include <cstdint>
#include <vector>

namespace brimwright::planning {

/// Something as it is weighed, and so often put on a scale of that step.
struct WeighedPart {
  Mass mass, step;
  std::int64_t weighings = 1;
};

/// What shares a lye solution, as it comes out with `share` of all that is in the `pot` instead of
/// an alkali of its own: `alkalis` went into the pot, in the formula's order. With the doubt that
/// the scales leave in share and pot.
chemistry::EffectiveSuperfat share_superfat(const chemistry::Formula& formula,
                                            const Weighing& weighing,
                                            const std::vector<WeighedPart>& alkalis,
                                            const WeighedPart& share, const WeighedPart& pot);

}  // namespace brimwright::planning
