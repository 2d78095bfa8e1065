#pragma once

#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "units/fields.h"

namespace brimwright::chemistry {

/// Reads a formula (schema brimwright.formula/2, or 1). UserError with file and field for anything
/// wrong or missing: shares that do not sum to 100 % (with the figure), no superfat, superfat
/// outside 0 to 30 %, lye strength above 50 % or below 15 %, a saponification value that is really
/// a NaOH value, or so far above what is known of its fat that the soap would be lye-heavy
/// (`refuse_lye_heavy_values`), waxes in place of fats (`refuse_wax_for_fat`), an alkali among
/// additives, liquids, fragrances or colours, an additive named like an acid or like something
/// fatty without saying which, an unknown fat (with the nearest known), more dispersing oil than
/// the formula holds of it, an acid counted twice, liquids that leave the lye too little water.
///
/// Fats are those of `table`: with the maker's own where the formula names a file of them
/// ("own_fats"), which the caller has read.
Formula read_formula(const Fields& fields, const FatTable& table = shipped_table());

}  // namespace brimwright::chemistry
