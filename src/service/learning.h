#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// What the batches of a folder's records tell for a run or a studio; or one such figure taken into
/// the file where a typed one would stand, or taken back. UserError where nothing is recorded.
Reply learned_for(const LearnRequest& request, const Request& asked, const moulds::Library& library,
                  const Caller& asked_by);

}  // namespace brimwright::service
