#pragma once

#include "planning/run.h"
#include "planning/tally.h"
#include "service/requests.h"

#include <string>

namespace brimwright::service {

/// How figures of `plan` come about, as `request.explain` asks: the figure of that name, or all
/// whose names begin with it and a dot. Without a name all of them, of which people are given the
/// list. UserError for a name that no figure has, with the nearest.
std::string explained(const PlanRequest& request, const Request& whole, const planning::Run& run,
                      const planning::Plan& plan);

}  // namespace brimwright::service
