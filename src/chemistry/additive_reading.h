#pragma once

#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "units/fields.h"

#include <optional>
#include <string_view>
#include <vector>

namespace brimwright::chemistry {

/// A formula's "additives", "fragrances" and "colours", in this order. Refuses a spoon rate without
/// a bulk density, an alkali by any of its names, an additive named like an acid or like something
/// fatty that does not say what it holds, a density that no powder or liquid has.
std::vector<Additive> read_additives(const Fields& formula,
                                     const FatTable& table = shipped_table());

// Parts of it that liquids are read with, too.

/// A density from 0.05 to 6 g/ml, if given.
std::optional<Density> optional_powder_density(const Fields& fields, std::string_view key);
/// Of a liquid: in a spoon it is as dense as in the batter, so that one of the two figures does.
void share_density(Additive& additive);
/// A rate above zero; by the spoon only with the additive's bulk density.
Rate read_positive_rate(const Fields& entry, std::string_view key, const Additive& additive);

}  // namespace brimwright::chemistry
