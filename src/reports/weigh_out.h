#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "reports/vessel.h"

#include <cstddef>
#include <string>
#include <vector>

namespace brimwright::reports {

/// All that is weighed for a batch: the day before what is cast ahead (with the run's first batch)
/// and lye that stands; then fats, lye and additives of the base, its layers, and the same of each
/// size of whipping; then dust. `batch` is one of the plan's.
std::vector<Vessel> weigh_out(const planning::Run& run, const planning::Plan& plan,
                              const planning::Batch& batch);

/// The same of a batch whose base is mixed with others' and weighed there.
std::vector<Vessel> weigh_out_beside_base(const planning::Run& run, const planning::Plan& plan,
                                          const planning::Batch& batch);

/// The jugs of a batch's layers, lowest first, with what is stirred into them.
Vessel jugs_of_layers(const std::string& key, const planning::Run& run,
                      const planning::Batch& batch);

/// What the keys of a batter's vessels begin with: "pour" of the base; of the batch's whippings by
/// their place "pipe", "pipe.2".
std::string base_key();
std::string whipping_key(std::size_t whipping);

}  // namespace brimwright::reports
