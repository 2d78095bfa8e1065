#pragma once

#include "cli/command.h"

#include <string>

namespace brimwright::cli {

/// The manual page of the program and all its commands, section 1, for man(1).
std::string man_page(const Command& all);

}  // namespace brimwright::cli
