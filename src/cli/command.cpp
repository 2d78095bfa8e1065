#include "cli/command.h"

namespace brimwright::cli {

std::string usage_of(const Command& command) {
  std::string usage = "[OPTIONS]";
  if (!command.commands.empty()) usage += " COMMAND";
  for (const auto& argument : command.arguments) {
    const std::string name = argument.name + (argument.repeats ? "..." : "");
    usage += " " + (argument.is_required ? name : "[" + name + "]");
  }
  return usage;
}

std::vector<std::string> names_of(const std::vector<Command>& commands) {
  std::vector<std::string> names;
  for (const auto& command : commands) names.push_back(command.name);
  return names;
}

std::vector<std::string> names_of(const std::vector<CommandOption>& options) {
  std::vector<std::string> names;
  for (const auto& option : options)
    names.insert(names.end(), option.names.begin(), option.names.end());
  return names;
}

}  // namespace brimwright::cli
