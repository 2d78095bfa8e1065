#pragma once

#include "chemistry/formula.h"
#include "units/quantity.h"

#include <vector>

namespace brimwright::chemistry {

/// Water that the formula's liquids bring, from the additives' masses.
Mass water_in_liquids(const Formula& formula, const std::vector<Mass>& additives);
/// The part of it that is in the pot when the alkali dissolves.
Mass water_in_lye_liquids(const Formula& formula, const std::vector<Mass>& additives);
/// Water that acid additives bring which are no liquids: vinegar, lactic acid of 80 %, the water of
/// crystals. It stands beside the formula's water and takes nothing off it.
Mass water_in_acids(const Formula& formula, const std::vector<Mass>& additives);
/// The part of it that is in the pot when the alkali dissolves.
Mass water_in_lye_acids(const Formula& formula, const std::vector<Mass>& additives);

}  // namespace brimwright::chemistry
