#pragma once

#include "cli/command.h"

#include <string>

namespace brimwright::cli {

// Scripts that complete what is typed after "brimwright": commands, options, and values as each
// option takes them. `all` is the program with its commands.
std::string bash_completions(const Command& all);
std::string zsh_completions(const Command& all);
std::string fish_completions(const Command& all);

}  // namespace brimwright::cli
