#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "runs/studio_file.h"
#include "units/fields.h"

namespace brimwright::runs {

/// A run's sections "pipe" and, of its losses, "pipe". Opens the formula and, where it is named, a
/// file of tips, both by the library's rules.
planning::Pipe read_pipe(const Fields& pipe, const Fields& losses, const moulds::Library& library,
                         const Studio& studio);

/// Asks for the size of one `topping`, which was read from `pipe`, and the time it takes, where
/// they are far from usual for a piece. Not for a loaf, whose topping may be any size.
void ask_for_topping(const Fields& pipe, const planning::Pipe& topping);

/// One move of the tip: "move" says which, the others are its sizes.
geometry::Move read_move(const Fields& move);

}  // namespace brimwright::runs
