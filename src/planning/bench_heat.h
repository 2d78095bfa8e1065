#pragma once

#include "chemistry/formula.h"
#include "chemistry/heat_findings.h"
#include "planning/weighing.h"

namespace brimwright::planning {

/// What of a batter goes into its pot of lye: alkali, plain water, and the additives that go into
/// the lye (water of frozen liquids as ice).
chemistry::LyeCharge lye_charge_of(const chemistry::Formula& formula, const Weighing& weighing);

/// How warm a batter's lye and pour get, for the bench that the maker tells of.
chemistry::HeatFindings heat_of(const chemistry::HeatQuestion& question,
                                const chemistry::Formula& formula, const Weighing& weighing);

}  // namespace brimwright::planning
