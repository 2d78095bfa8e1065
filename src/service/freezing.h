#pragma once

#include "moulds/library.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "records/batches.h"
#include "service/requests.h"

#include <cstdint>
#include <string>
#include <vector>

namespace brimwright::service {

/// A run's plan as it is kept with a batch: past the gates, its whole answer, and all that it was
/// made from, as it was read.
struct FrozenPlan {
  planning::Run run;
  planning::Plan plan;
  std::string answer;  // JSON
  std::vector<records::Source> sources;

  /// That of number `number` of the run's batches. Expects there to be one.
  const planning::Batch& batch(std::int64_t number) const;
};

/// All files that a plan was made from, each once.
struct PlanSources {
  std::vector<records::Source> sources;
  /// All as `library.read_once` has them, from which the plan was made. Otherwise some were read
  /// now, and may have been changed since the plan was made.
  bool are_as_planned = true;
};
/// Those of a plan of `file`. UserError where one was changed while it was planned.
PlanSources sources_of_plan(const std::string& file, const std::vector<std::string>& read,
                            const moulds::Library& library);

/// UserError where the run cannot be planned, and where its files changed meanwhile.
FrozenPlan frozen_plan(const std::string& file, const moulds::Library& library,
                       const Caller& caller);

}  // namespace brimwright::service
