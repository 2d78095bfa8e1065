#pragma once

#include "chemistry/heat_findings.h"
#include "planning/lye_pot.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/quantity.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::planning {

// One lye for several batches, which may be of several runs.

/// What takes its lye from which pot, where a batch shares its lyes with others.
struct PotOfBatch {
  enum class For { base, topping, all } what = For::base;
  std::vector<PotBatter> batters;
  chemistry::HeatQuestion temperatures = {};
};
/// The pots of a batch: of its base, and of its topping with all its whippings; or the one that
/// they share. They refer to both arguments.
std::vector<PotOfBatch> pots_of(const Run& run, const Batch& batch);

/// Why its lye cannot come out of a pot for several batches; empty where it can.
std::string keeps_its_own(const PotOfBatch& pot);

/// Whether one lye does for both: the same alkalis of one purity in the same proportion, as strong;
/// of base and topping, where they share a pot, each.
bool take_the_same_lye(const PotOfBatch& one, const PotOfBatch& other);

/// For how many of these batches a pot that holds so much does, half full: none, one or more.
std::int64_t batches_in_pot(Volume holds, const std::vector<PotOfBatch>& pots);

/// The peak of a pot for all these batches: of the benches told of, that of the hottest.
chemistry::HeatFindings heat_of_day_pot(const std::vector<chemistry::HeatQuestion>& benches,
                                        const chemistry::Formula& formula, const LyePot& pot);

}  // namespace brimwright::planning
