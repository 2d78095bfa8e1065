#pragma once

#include "cli/command.h"

#include <string>

namespace brimwright::cli {

/// The help of `command`, called with `name` ("brimwright gauge"); at most 80 columns, as far as
/// its teaching has no longer lines.
std::string help_text(const Command& command, const std::string& name);

}  // namespace brimwright::cli
