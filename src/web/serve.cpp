#include "web/serve.h"

#include "web/browser.h"

#include <unistd.h>

#include <ostream>

namespace brimwright::web {

int serve(const ServerSettings& settings, bool opens_browser, std::ostream& out) {
  Server server(settings);
  server.stop_at_signals();
  out << "Brimwright serves at " << server.address() << "  (Ctrl+C ends it)" << std::endl;
  if (opens_browser) open_in_browser(server.address());
  const bool all_answered = server.run();
  // While a second Ctrl+C still does nothing, so that none can leave them lying about.
  server.remove_uploads();
  if (all_answered) return 0;
  // A measurement cannot be broken off, and its thread must not outlive what it works on.
  out.flush();
  ::_exit(0);
}

}  // namespace brimwright::web
