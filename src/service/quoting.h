#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// What a piece of a run costs, for one number of pieces or several side by side, and what to ask
/// for it. UserError as planning gives it, where a price does not come about, and for a number that
/// cannot be made.
Reply quoted(const QuoteRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller);

}  // namespace brimwright::service
