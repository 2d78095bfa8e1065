#pragma once

#include "planning/plan.h"
#include "planning/run.h"

namespace brimwright::planning {

/// The depth in `mould` that `level` means. UserError at `where` when it lies outside the cavity.
Length depth_of(const FillLevel& level, const moulds::Mould& mould, const Place& where);

/// Casts, tray fills and melt of one decoration that lies as `fit` says: spares on top of what the
/// pieces need; two halves take two cavities; melt loss as a share of what is melted; jug film for
/// each tray fill.
PerchTally perch_tally(const Run& run, std::size_t index, const Pieces& pieces, PerchFit fit);

}  // namespace brimwright::planning
