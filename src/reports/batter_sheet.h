#pragma once

#include "reports/batter_on_sheet.h"
#include "reports/sheet_blocks.h"
#include "reports/vessel.h"

namespace brimwright::reports {

// What the bench sheet says of one batter; bench_sheet.h puts it in order.

/// Its title, what is weighed into it with the running total, and what is to be read there.
void add_vessel(const Vessel& vessel, const planning::Run& run, Sheet& sheet);
/// What it all comes to, and at what superfat.
void add_superfat(const BatterOnSheet& batter, Sheet& sheet);

}  // namespace brimwright::reports
