#pragma once

#include "chemistry/formula.h"
#include "chemistry/liquid.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// A typical composition of data/liquids.json, used only where a formula names it.
struct LiquidComposition {
  std::string name;  // "coconut milk, canned"
  Liquid liquid;     // water, sugar, salt and source
  std::optional<ContainedFat> fat;
};

const std::vector<LiquidComposition>& liquid_compositions();
/// The composition of that name, or nullptr.
const LiquidComposition* find_liquid_composition(std::string_view name);

/// Milk's fat, which is in no bottle and so not among the shipped fats.
const Fat& milk_fat();

/// Salt that water holds at 20 degC, as a share of the brine: 26.41 % (CRC Handbook).
Share saturated_brine();

/// Density of a liquid from what is in it, volumes taken as additive; the rest counted as protein.
/// Whole milk comes out within 0.5 % of its published 1.027 to 1.033 g/ml.
Density density_from_contents(const Liquid& liquid, const std::optional<ContainedFat>& fat);

}  // namespace brimwright::chemistry
