#pragma once

#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "units/fields.h"

#include <vector>

namespace brimwright::chemistry {

/// A formula's "liquids", as additives that carry a `Liquid`. The composition is the label's, given
/// in full (water, fat, sugar, salt), or one of the shipped ones by its name; never assumed. A
/// liquid that "replaces" a share of the formula's water gets its rate from `settle_liquids`.
///
/// Refuses shares above the whole, less than 25 % of water, more salt than water holds, a name that
/// sounds like an acid's without saying which.
std::vector<Additive> read_liquids(const Fields& formula, const FatTable& table);

}  // namespace brimwright::chemistry
