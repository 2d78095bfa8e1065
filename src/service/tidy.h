#pragma once

#include "moulds/library.h"
#include "service/requests.h"

namespace brimwright::service {

/// Rewrites the files of `request` in today's version of their schemas: each that is of the version
/// before comes back whole, under its own name; a run without an id gets one. Each is read by its
/// own reader before and after. UserError for one that is wrong, and then none comes back.
Reply tidied_up(const TidyRequest& request, const UserTerms& terms, const moulds::Library& library);

}  // namespace brimwright::service
