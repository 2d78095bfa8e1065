#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/quantity.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// Density of the plain batter at the formula's pour temperature, volumes taken as additive (good
/// to 1-2 %): fats, lye solution and additives each by their own density. What is impure in the
/// alkali is taken to be dissolved and as dense as the alkali; a lye of both alkalis has, by mass,
/// the specific volumes of the two lyes of its strength.
struct BatterDensity {
  Density computed;
  Density used;                 // the measured one where the formula has it
  std::vector<Remark> remarks;  // densities estimated, taken as water's or of a fat not yet molten;
                                // a measured one far from the computed
};
BatterDensity batter_density(const Formula& formula, const Proportions& per_fat);

/// Volume of the lye of `alkalis`, as weighed and in the formula's order, in `plain_water`, at the
/// formula's pour temperature. Impurities count as alkali here, so the strength is that of the
/// alkali as weighed; each alkali takes water in proportion to its mass: lyes of one strength, side
/// by side. A solution counts as pure alkali and more water.
Volume lye_volume(const Formula& formula, const std::vector<Mass>& alkalis, Mass plain_water);

}  // namespace brimwright::chemistry
