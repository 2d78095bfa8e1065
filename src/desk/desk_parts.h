#pragma once

#include "desk/desk_request.h"
#include "service/requests.h"
#include "units/fields.h"
#include "units/question.h"

#include <string>

namespace brimwright::desk {

// What the routes of a desk have in common; for desk.cpp and the files beside it.

/// Not for maker's eyes: the request goes to the end of the other queue.
struct NeedsSlowQueue {};

/// The page's own fields: their names, and a library is given at the start alone.
UserTerms page_terms();

Fields fields_of(const DeskRequest& request);
/// What stands in the address under that name. UserError if nothing does.
std::string asked(const DeskRequest& request, const std::string& name);
/// A reply that is no answer.
HttpAnswer refused(const service::Reply& reply);

}  // namespace brimwright::desk
