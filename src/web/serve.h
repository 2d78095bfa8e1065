#pragma once

#include "web/server.h"

#include <iosfwd>

namespace brimwright::web {

/// `brimwright serve`: prints the address, opens it in a browser if wanted, serves until SIGINT,
/// SIGTERM or SIGHUP. Says on `err` when a worker died. Gives the exit status. UserError where it
/// cannot begin.
int serve(ServerSettings settings, bool opens_browser, std::ostream& out, std::ostream& err);

}  // namespace brimwright::web
