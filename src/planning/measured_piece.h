#pragma once

#include "planning/measured.h"
#include "planning/piece.h"

namespace brimwright::planning {

/// The whole piece of `run`, of the solids that were made when it was measured.
PieceModel piece_model(const Run& run, const Measured& measured);

}  // namespace brimwright::planning
