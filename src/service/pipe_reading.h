#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "units/fields.h"

namespace brimwright::service {

/// A run's sections "pipe" and, of its losses, "pipe". Opens the formula and, where it is named, a
/// file of tips, both by the library's rules.
planning::Pipe read_pipe(const Fields& pipe, const Fields& losses, const moulds::Library& library);

/// One move of the tip: "move" says which, the others are its sizes.
geometry::Move read_move(const Fields& move);

}  // namespace brimwright::service
