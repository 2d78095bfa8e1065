#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "runs/studio_file.h"
#include "units/fields.h"

namespace brimwright::runs {

/// A run's sections "pour" and, of its losses, "pour". Opens the mould and the formula by the
/// library's rules. UserError with the field for anything missing, unknown or contradictory.
planning::Pour read_pour(const Fields& pour, const Fields& losses, const moulds::Library& library,
                         const Studio& studio);

}  // namespace brimwright::runs
