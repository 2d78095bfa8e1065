#pragma once

#include "service/requests.h"

namespace brimwright::service {

/// The files of a folder to begin in: a studio, a mould, a formula and a run, in which every figure
/// is a blank that says what goes there and how it is measured. Named as in the folder asked for;
/// the caller writes them. UserError where one of them is there already.
Reply begun(const InitRequest& request, const UserTerms& terms);

}  // namespace brimwright::service
