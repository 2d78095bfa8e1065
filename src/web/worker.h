#pragma once

#include "web/worker_start.h"

namespace brimwright::web {

/// The process behind the page: answers what its server sends by the socket it was given, until
/// that closes; never returns then. False if anybody else has started it.
bool be_worker();

}  // namespace brimwright::web
