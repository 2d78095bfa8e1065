#pragma once

#include <string>

namespace brimwright::web {

/// Starts the program that BROWSER names, or else xdg-open, with `address`; without a shell, and
/// without anything of ours open in it. Does nothing if there is no such program.
void open_in_browser(const std::string& address);

}  // namespace brimwright::web
