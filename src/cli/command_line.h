#pragma once

#include "cli/command.h"
#include "cli/words.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::cli {

/// What was typed: words to act on, or where help or the version was asked for the text to print.
struct CommandLine {
  Words words;
  std::optional<std::string> told = {};
};

/// Reads `arguments`, those after the program's name; without any, and for "help" with or without
/// a command's name, the help. UserError in one line for what is not understood, with the nearest
/// name of a command or an option.
CommandLine read_command_line(const std::vector<std::string>& arguments);

/// All that may be typed, hidden commands left out.
Command all_commands();

}  // namespace brimwright::cli
