#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// Lots and pieces of a studio, after what the request does to them. UserError for what cannot be
/// done, and a Question for what may be a slip; then nothing is recorded.
Reply stocked(const StockRequest& request, const Request& asked, const moulds::Library& library,
              const Caller& caller);

}  // namespace brimwright::service
