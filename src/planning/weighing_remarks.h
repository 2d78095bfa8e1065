#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "chemistry/superfat.h"
#include "planning/weighing.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::planning {

/// What is said of a superfat that may come out below zero, as `batter`'s: a danger where the
/// likely band reaches there, a caution where only the worst case does, nothing otherwise. Each
/// names the main cause and the remedy.
std::vector<Remark> superfat_alarms(const chemistry::EffectiveSuperfat& superfat,
                                    const std::string& batter);

/// Adds to a trial what is to be said of it: alarms, remarks and doubts.
void remark_on(Weighing& weighing, const chemistry::Formula& formula,
               const chemistry::Proportions& per_fat, const Scales& scales);

}  // namespace brimwright::planning
