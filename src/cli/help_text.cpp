#include "cli/help_text.h"

#include "units/shown_text.h"

#include <algorithm>

namespace brimwright::cli {
namespace {

constexpr std::size_t page = 80, column = 28;

/// `left` and beside it `right`, broken at blanks.
std::string row(const std::string& left, const std::string& right) {
  std::string text = "  " + left, line;
  std::size_t used = 2 + characters_in(left);
  const auto go_on = [&] {
    text += "\n" + std::string(column, ' ');
    used = column;
  };
  if (used + 2 > column) {
    go_on();
  } else {
    text += std::string(column - used, ' ');
    used = column;
  }
  for (std::size_t at = 0; at < right.size();) {
    const std::size_t end = std::min(right.find(' ', at), right.size());
    const std::string word = right.substr(at, end - at);
    const std::size_t width = characters_in(word) + (used > column ? 1 : 0);
    if (used > column && used + width > page) go_on();
    text += (used > column ? " " : "") + word;
    used += characters_in(word) + (used > column ? 1 : 0);
    at = end + 1;
  }
  return text + "\n";
}

std::string names_of(const CommandOption& option) {
  std::string names;
  for (const auto& name : option.names) names += (names.empty() ? "" : ", ") + name;
  return names + (option.value.empty() ? "" : " " + option.value);
}

std::string options_text(const Command& command) {
  std::vector<std::string> groups;
  for (const auto& option : command.options)
    if (std::find(groups.begin(), groups.end(), option.group) == groups.end())
      groups.push_back(option.group);
  std::string text;
  for (const auto& group : groups) {
    text += "\n" + (group.empty() ? "Options" : group) + ":\n";
    for (const auto& option : command.options)
      if (option.group == group)
        text += row(names_of(option), option.what + (option.repeats ? "; repeatable" : ""));
  }
  return text;
}

}  // namespace

std::string help_text(const Command& command, const std::string& name) {
  std::string text = command.what + "\n\nUsage: " + name + " " + usage_of(command) + "\n";
  if (!command.commands.empty()) text += "\nCommands:\n";
  for (const auto& below : command.commands) text += row(below.name, below.what);
  if (!command.arguments.empty()) text += "\n";
  for (const auto& argument : command.arguments) text += row(argument.name, argument.what);
  return text + options_text(command) + (command.teaching.empty() ? "" : "\n" + command.teaching);
}

}  // namespace brimwright::cli
