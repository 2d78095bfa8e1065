#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// Follows a lot, a batch or an order through the records, both ways. Question where what was asked
/// about is more than one of these, until its kind is said before it: "batch A1". UserError for
/// what the records do not have.
Reply traced(const TrailRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller);

}  // namespace brimwright::service
