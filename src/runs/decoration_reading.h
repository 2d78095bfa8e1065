#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "runs/studio_file.h"
#include "units/fields.h"

#include <cstddef>

namespace brimwright::runs {

/// One entry of a run's section "decorations"; `is_cut` says that a cast is cut into several
/// pieces.
planning::Decoration read_decoration(const Fields& fields, bool is_cut,
                                     const moulds::Library& library, const Studio& studio);

/// Asks for the mass of the decoration at `index` of `run`, which was read from `fields`, where it
/// is far from usual. UserError for a fill outside its mould.
void ask_for_decoration(const Fields& fields, const planning::Run& run, std::size_t index);

}  // namespace brimwright::runs
