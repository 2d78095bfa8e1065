#pragma once

#include "service/requests.h"

namespace brimwright::service {

/// Tells what a folder's records hold, after they were imported where that is asked; exports them
/// and backs them up.
Reply record_keeping(const RecordsRequest& request, const Request& asked, const Caller& caller);

}  // namespace brimwright::service
