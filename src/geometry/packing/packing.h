#pragma once

#include "geometry/packing/packing_task.h"
#include "units/quantity.h"

namespace brimwright::geometry {

/// The most bodies that the search could place, and where. Every place is proved by the surfaces
/// themselves (gap_between), so what it answers does fit; that no more would fit it cannot prove.
///
/// The same answer for the same task: the search has a fixed amount of work (about 5 s on one core
/// at most) and a fixed seed, never a clock.
Packing packed(const PackingTask& task, const Progress& progress = {});

/// By how much one body could be scaled, with its cover as it is, and still be found to fit: above
/// 1 if there is room to spare, below if it does not fit. Proved to fit at what it answers, and not
/// found to fit at 0.5 % more. 0 where not even a hundredth fits.
double largest_scale_that_fits(const PackingTask& task, const Progress& progress = {});

}  // namespace brimwright::geometry
