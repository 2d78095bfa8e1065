#pragma once

#include <string>
#include <vector>

namespace brimwright::cli {

// What the command line takes, read off the parser itself (cli/command_line): of this the help, the
// shells' completions and the manual page are made, so none of them can tell of something else.

/// What may be typed for a value: one of `words`, or a file with one of `endings` (".json"), or a
/// folder; with nothing here, anything.
struct Completion {
  std::vector<std::string> words, endings;
  bool folders = false;
};

struct CommandOption {
  std::vector<std::string> names;  // "--json"; "-h" and "--help"
  std::string value;               // how its value is called, "FILE.svg"; empty for a flag
  std::string what;                // in a few words
  std::string group;               // the heading it stands under; empty for the usual one
  Completion takes;
  bool repeats = false;
};

/// A value without an option's name.
struct Argument {
  std::string name, what;
  Completion takes;
  bool is_required = false, repeats = false;
};

struct Command {
  std::string name, what;
  std::string teaching;  // examples and what else there is to say, ready to be shown
  std::vector<Argument> arguments;
  std::vector<CommandOption> options;
  std::vector<Command> commands;
};

/// Its usage on one line, after "brimwright" and its own name: "[OPTIONS] FILE".
std::string usage_of(const Command& command);

std::vector<std::string> names_of(const std::vector<Command>& commands);
/// All names of all of them: "-h", "--help", "--json".
std::vector<std::string> names_of(const std::vector<CommandOption>& options);

}  // namespace brimwright::cli
