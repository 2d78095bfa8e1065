#pragma once

#include "chemistry/formula.h"
#include "moulds/library.h"
#include "moulds/mould.h"
#include "units/fields.h"

namespace brimwright::runs {

/// The mould file that stands at "mould", and how many of it she owns where "moulds_owned" says so.
moulds::Mould read_mould_named_in(const Fields& section, const moulds::Library& library);

/// The formula file that stands at "formula", by the library's rules.
chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library);

/// A formula's document, with the own fats that it names.
chemistry::Formula read_formula(const Fields& formula, const moulds::Library& library);

}  // namespace brimwright::runs
