#pragma once

#include "chemistry/formula.h"
#include "moulds/library.h"
#include "moulds/mould.h"
#include "runs/studio_file.h"
#include "units/fields.h"

namespace brimwright::runs {

/// The mould file that stands at "mould", and how many of it she owns: by the section's
/// "moulds_owned", else by the studio, else by the mould's own file.
moulds::Mould read_mould_named_in(const Fields& section, const moulds::Library& library,
                                  const Studio& studio);

/// The formula file that stands at "formula", by the library's rules.
chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library);

/// A formula's document, with the own fats that it names.
chemistry::Formula read_formula(const Fields& formula, const moulds::Library& library);

}  // namespace brimwright::runs
