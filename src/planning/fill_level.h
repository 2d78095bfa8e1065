#pragma once

#include "moulds/mould.h"
#include "planning/run.h"
#include "units/quantity.h"
#include "units/user_error.h"

namespace brimwright::planning {

/// The depth in `mould` that `level` means. UserError at `where` when it lies outside the cavity.
Length depth_of(const FillLevel& level, const moulds::Mould& mould, const Place& where);

}  // namespace brimwright::planning
