#pragma once

#include "moulds/library.h"
#include "service/requests.h"

#include <functional>

namespace brimwright::service {

// The one door behind every user interface: a request in, a document out. No sockets, and no files
// beyond those that a request names and the shipped catalogue.

/// `progress` is told now and then how far a search is, 0 to 1; it may be empty.
Reply answer(const Request& request, const moulds::Library& library,
             const std::function<void(double)>& progress = {});

}  // namespace brimwright::service
