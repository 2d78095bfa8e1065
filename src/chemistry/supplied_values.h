#pragma once

#include "chemistry/formula.h"
#include "units/remark.h"

#include <vector>

namespace brimwright::chemistry {

/// Refuses, at the field where it stands, a saponification value above what is known of its fat
/// (`known_ranges`) if the lye for it would be too much for the highest value that is known: if
/// the formula's superfat is below zero with every such fat at that value and all others at the
/// ones reckoned with. What the maker confirmed is taken at its word.
///
/// The whole formula's superfat decides, not the fat's own: a twentieth of the fats with a wrong
/// value does not burn, and two doubtful values at once may where each alone would not.
void refuse_lye_heavy_values(const Formula& formula);

/// What to check in suppliers' saponification values before weighing lye: a danger for each value
/// that would have been refused but was confirmed, then a caution for each that lies outside what
/// is known of its fat. A fat gets one at most.
std::vector<Remark> supplied_value_cautions(const Formula& formula);

/// Notes on the maker's own fats that stand in place of built-in ones with the same id.
std::vector<Remark> own_in_place_notes(const Formula& formula);

/// Notes on what is taken as exact because no range is given (saponification values, purities),
/// on the range taken for a purity of KOH without one, and on own fats with nothing known here to
/// hold their value against.
std::vector<Remark> taken_as_exact_notes(const Formula& formula);

}  // namespace brimwright::chemistry
