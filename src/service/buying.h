#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// Plans each run, adds up what they need together, with the studio's waste and less what is on its
/// shelf, and answers with the cheapest purchase. UserError for runs of different studios or
/// currencies, for one that is named twice, and where plan or packs are not in order.
Reply bought(const BuyRequest& request, const Request& asked, const moulds::Library& library,
             const Caller& caller);

}  // namespace brimwright::service
