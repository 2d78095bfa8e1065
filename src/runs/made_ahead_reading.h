#pragma once

#include "chemistry/formula.h"
#include "runs/studio_file.h"
#include "units/fields.h"

namespace brimwright::runs {

/// Puts into `formula` what `batter`, a run's "pour" or "pipe", takes of what stands ready in the
/// studio: lye solutions, by their names under "lye_from", and a blend of fats under "blend", with
/// its share of the fats or as much as there is room for. UserError for a name that the studio does
/// not have, and for what the formula cannot take.
void take_what_stands_ready(chemistry::Formula& formula, const Fields& batter,
                            const Studio& studio);

}  // namespace brimwright::runs
