#pragma once

#include "chemistry/formula.h"
#include "units/fields.h"

#include <vector>

namespace brimwright::chemistry {

/// A formula's "additives", "fragrances" and "colours", in this order. Refuses a spoon rate without
/// a bulk density, an additive named like an acid or like something fatty that does not say what it
/// holds, a density that no powder or liquid has.
std::vector<Additive> read_additives(const Fields& formula,
                                     const FatTable& table = shipped_table());

}  // namespace brimwright::chemistry
