#pragma once

#include "moulds/library.h"
#include "runs/order_file.h"
#include "service/requests.h"

namespace brimwright::service {

/// What the pieces of an order cost and what to ask for them, each line by its own run, what each
/// order costs spread over all. UserError where the runs are of several studios or currencies.
Reply quoted_order(const runs::Order& order, const QuoteRequest& request, const Request& asked,
                   const moulds::Library& library, const Caller& caller);

}  // namespace brimwright::service
