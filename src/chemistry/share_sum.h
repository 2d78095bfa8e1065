#pragma once

#include "units/share.h"
#include "units/user_error.h"

#include <string>

namespace brimwright::chemistry {

/// UserError where shares that are to make a whole do not; they are never rescaled: which of them
/// is the slip, only the maker knows.
void refuse_wrong_sum(Share sum, const std::string& of_what, const Place& where);

}  // namespace brimwright::chemistry
