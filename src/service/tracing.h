#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// Follows a lot, a batch or an order through the records, both ways. UserError for what the
/// records do not have.
Reply traced(const TrailRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller);

}  // namespace brimwright::service
