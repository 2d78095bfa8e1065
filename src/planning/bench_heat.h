#pragma once

#include "chemistry/formula.h"
#include "chemistry/heat_findings.h"
#include "planning/lye_pot.h"
#include "planning/weighing.h"

namespace brimwright::planning {

/// What of a batter goes into its pot of lye: alkali, plain water, and the additives that go into
/// the lye (water of frozen liquids as ice).
chemistry::LyeCharge lye_charge_of(const chemistry::Formula& formula, const Weighing& weighing);

/// How warm a batter's lye and pour get, for the bench that the maker tells of.
chemistry::HeatFindings heat_of(const chemistry::HeatQuestion& question,
                                const chemistry::Formula& formula, const Weighing& weighing);

/// The peak of a pot that batters share; `formula` is any of theirs, as all hold the same alkali.
/// Where it is used and what it meets is each batter's own (`heat_of`).
chemistry::HeatFindings heat_of_pot(const chemistry::HeatQuestion& question,
                                    const chemistry::Formula& formula, const LyePot& pot);

}  // namespace brimwright::planning
