#pragma once

#include "records/records.h"

#include <functional>
#include <string>

namespace brimwright::service {

/// Before the first records of `folder` are begun: tries on empty ones what would begin them, so
/// that what cannot be done leaves none behind. UserError as `act` throws it, unless somebody began
/// records there meanwhile: what those hold tells more.
void rehearse(const std::string& folder, const std::function<void(records::Records&)>& act);

}  // namespace brimwright::service
