#pragma once

#include "planning/run.h"
#include "planning/tally.h"

namespace brimwright::planning {

/// Casts, tray fills and melt of one decoration that lies as `fit` says: spares on top of what the
/// pieces need; two halves take two cavities; melt loss as a share of what is melted; jug film for
/// each tray fill. What is bought is only counted.
DecorationTally decoration_tally(const Run& run, std::size_t index, const Pieces& pieces,
                                 DecorationFit fit);

}  // namespace brimwright::planning
