#pragma once

#include "moulds/library.h"
#include "records/batches.h"
#include "records/records.h"
#include "service/freezing.h"
#include "service/requests.h"

#include <optional>
#include <string>

namespace brimwright::service {

/// The plan that `batch` was frozen with, planned again from the files of now: of a run by its
/// `file`, of a base and of what is poured from it by their order. Nothing where they weigh the
/// batch otherwise by now, or cannot be planned.
std::optional<FrozenPlan> plan_again(const records::Records& records, const records::Batch& batch,
                                     const std::string& file, const moulds::Library& library,
                                     const Caller& caller);

}  // namespace brimwright::service
