#pragma once

#include "chemistry/fats.h"
#include "chemistry/formula.h"
#include "units/fields.h"

#include <string_view>

namespace brimwright::chemistry {

/// The fat of `table` whose id stands at `key`; an unknown one is refused with the nearest known.
Fat read_fat_id(const Fields& fields, std::string_view key,
                const FatTable& table = shipped_table());

/// One entry of a formula's "fats", less the check of its sum with the others. A saponification
/// value from a supplier is refused when it looks like a NaOH value or lies where no fat does.
FormulaFat read_formula_fat(const Fields& entry, const FatTable& table);

}  // namespace brimwright::chemistry
