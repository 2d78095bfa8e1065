#pragma once

#include "chemistry/formula.h"
#include "moulds/library.h"
#include "units/fields.h"

namespace brimwright::service {

/// The formula file that stands at "formula", by the library's rules.
chemistry::Formula read_formula_named_in(const Fields& section, const moulds::Library& library);

}  // namespace brimwright::service
