#include "web/serve.h"

#include "units/shown_text.h"
#include "web/browser.h"

#include <ostream>

namespace brimwright::web {

int serve(ServerSettings settings, bool opens_browser, std::ostream& out, std::ostream& err) {
  settings.tell = [&err](const std::string& line) {
    err << "brimwright serve: " + on_one_line(line) + "\n";
  };
  Server server(settings);
  server.stop_at_signals();
  out << "Brimwright is running at " << server.address() << "  (Ctrl+C stops it)" << std::endl;
  server.plan_ahead();
  if (opens_browser) open_in_browser(server.address());
  server.run();
  // While a second Ctrl+C still does nothing, so that none can leave anything lying about.
  server.clear_up();
  return 0;
}

}  // namespace brimwright::web
