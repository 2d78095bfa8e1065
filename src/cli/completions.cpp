#include "cli/completions.h"

#include <algorithm>

namespace brimwright::cli {
namespace {

std::string joined(const std::vector<std::string>& words, const char* between = " ") {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : between) + word;
  return text;
}

std::string replaced(std::string text, const std::string& old, const std::string& by) {
  for (std::size_t at = 0; (at = text.find(old, at)) != std::string::npos; at += by.size())
    text.replace(at, old.size(), by);
  return text;
}

/// In single quotes, for any of the three shells: bash and zsh leave and come back for a quote.
std::string quoted(const std::string& text) { return "'" + replaced(text, "'", "'\\''") + "'"; }

/// `help` is told by the names of the others.
Completion takes_of(const Argument& argument, const Command& command, const Command& all) {
  if (command.name != "help") return argument.takes;
  return {.words = names_of(all.commands), .endings = {}};
}

// ---- bash

std::string bash_values(const Completion& takes) {
  if (!takes.words.empty()) return "_brimwright_words " + quoted(joined(takes.words));
  if (takes.folders) return "_brimwright_files";
  return takes.endings.empty() ? ":" : "_brimwright_files " + joined(takes.endings);
}

std::string bash_case(const Command& command, const Command& all) {
  std::string text = "    " + command.name + ")\n      case $prev in\n";
  for (const auto& option : command.options)
    if (!option.value.empty())
      text += "        " + joined(option.names, "|") + ") " + bash_values(option.takes) +
              "; return ;;\n";
  text += "      esac\n      if [[ $cur == -* ]]; then _brimwright_words " +
          quoted(joined(names_of(command.options))) + "\n";
  for (std::size_t i = 0; i < command.arguments.size(); ++i) {
    const auto& argument = command.arguments[i];
    text += "      elif (( place " + std::string(argument.repeats ? ">=" : "==") + " " +
            std::to_string(i) + " )); then " + bash_values(takes_of(argument, command, all)) + "\n";
  }
  return text + "      fi ;;\n";
}

/// The options of any command that a value follows.
std::string options_with_value(const Command& all) {
  std::vector<std::string> names;
  for (const auto& command : all.commands)
    for (const auto& option : command.options)
      if (!option.value.empty() && !option.value.starts_with("["))
        for (const auto& name : option.names)
          if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  return joined(names, "|");
}

// ---- zsh

std::string zsh_escaped(std::string text) {
  for (const char* special : {"\\", "[", "]", ":"})
    text = replaced(text, special, std::string("\\") + special);
  return text;
}

std::string zsh_values(const Completion& takes) {
  if (!takes.words.empty()) return "(" + joined(takes.words) + ")";
  if (takes.folders) return "_files -/";
  if (takes.endings.empty()) return " ";
  std::string endings;
  for (const auto& ending : takes.endings)
    endings += (endings.empty() ? "" : "|") + ending.substr(1);
  // One alone in brackets would be taken for what the files are to be like.
  const bool is_one = takes.endings.size() == 1;
  return "_files -g \"*." + (is_one ? endings : "(" + endings + ")") + "\"";
}

std::string zsh_option(const CommandOption& option) {
  std::string text;
  for (const auto& name : option.names) {
    std::string spec = (option.repeats ? "*" : "") + name + (option.value.empty() ? "" : "=") +
                       "[" + zsh_escaped(option.what) + "]";
    if (!option.value.empty())
      spec += std::string(option.value.starts_with("[") ? "::" : ":") + zsh_escaped(option.value) +
              ":" + zsh_values(option.takes);
    text += " \\\n        " + quoted(spec);
  }
  return text;
}

std::string zsh_case(const Command& command, const Command& all) {
  std::string text = "    " + command.name + ")\n      _arguments";
  for (const auto& option : command.options) text += zsh_option(option);
  for (std::size_t i = 0; i < command.arguments.size(); ++i) {
    const auto& argument = command.arguments[i];
    text += " \\\n        " +
            quoted((argument.repeats ? "*" : std::to_string(i + 1)) + std::string(":") +
                   zsh_escaped(argument.name) + ":" + zsh_values(takes_of(argument, command, all)));
  }
  return text + " ;;\n";
}

// ---- fish

std::string fish_values(const Completion& takes) {
  if (!takes.words.empty()) return " -x -a " + quoted(joined(takes.words));
  if (takes.folders) return " -x -a '(__fish_complete_directories)'";
  if (takes.endings.empty()) return " -x";
  std::string text;
  for (const auto& ending : takes.endings)
    text += (text.empty() ? "" : "; ") + ("__fish_complete_suffix " + ending);
  return " -k -x -a '(" + text + ")'";
}

std::string fish_option(const CommandOption& option, const std::string& condition) {
  std::string text = "complete -c brimwright" + condition;
  for (const auto& name : option.names)
    text += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
  if (!option.value.empty()) text += fish_values(option.takes);
  // fish escapes a quote within quotes by a backslash.
  return text + " -d '" + replaced(option.what, "'", "\\'") + "'\n";
}

}  // namespace

std::string bash_completions(const Command& all) {
  std::string text =
      "# Completion of brimwright for bash, made by brimwright completions bash.\n"
      "_brimwright_words() { COMPREPLY=($(compgen -W \"$1\" -- \"$cur\")); }\n"
      "\n"
      "# Folders, and files with one of these endings.\n"
      "_brimwright_files() {\n"
      "  local IFS=$'\\n' ending\n"
      "  COMPREPLY=($(compgen -d -- \"$cur\"))\n"
      "  for ending; do\n"
      "    COMPREPLY+=($(compgen -f -X \"!*$ending\" -- \"$cur\") "
      "$(compgen -f -X \"!*${ending^^}\" -- \"$cur\"))\n"
      "  done\n"
      "  compopt -o filenames 2>/dev/null\n"
      "}\n"
      "\n"
      "_brimwright() {\n"
      "  local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]}\n"
      "  local command= place=0 i\n"
      "  # bash takes --unit=mm for three words.\n"
      "  if [[ $cur == = ]]; then cur=\n"
      "  elif [[ $prev == = ]]; then prev=${COMP_WORDS[COMP_CWORD-2]}\n"
      "  fi\n"
      "  COMPREPLY=()\n"
      "  # The command, and how many values without a name stand before this word.\n"
      "  for ((i = 1; i < COMP_CWORD; ++i)); do\n"
      "    case ${COMP_WORDS[i]} in\n"
      "      " +
      options_with_value(all) +
      ") ((++i)); if [[ ${COMP_WORDS[i]} == = ]]; then ((++i)); fi ;;\n"
      "      -?*) ;;\n"
      "      *) if [[ $command ]]; then ((++place)); else command=${COMP_WORDS[i]}; fi ;;\n"
      "    esac\n"
      "  done\n"
      "  case $command in\n"
      "    '') _brimwright_words " +
      quoted(joined(names_of(all.commands)) + " " + joined(names_of(all.options))) + " ;;\n";
  for (const auto& command : all.commands) text += bash_case(command, all);
  return text + "  esac\n}\n\ncomplete -F _brimwright brimwright\n";
}

std::string zsh_completions(const Command& all) {
  std::string text =
      "#compdef brimwright\n"
      "# Completion of brimwright for zsh, made by brimwright completions zsh.\n"
      "_brimwright() {\n"
      "  local context state state_descr line curcontext=$curcontext\n"
      "  typeset -A opt_args\n"
      "  _arguments -C";
  for (const auto& option : all.options) text += zsh_option(option);
  text +=
      " \\\n        '1:command:->command' '*:::argument:->rest'\n  case $state in\n    command)\n"
      "      local -a commands=(";
  for (const auto& command : all.commands)
    text += "\n        " + quoted(command.name + ":" + zsh_escaped(command.what));
  text += ")\n      _describe -t commands command commands ;;\n    rest)\n";
  // What is typed after a command is looked at as though the command stood before it alone.
  text += "  words=(\"$line[1]\" \"${words[@]}\")\n  (( CURRENT += 1 ))\n";
  text += "  curcontext=\"${curcontext%:*:*}:brimwright-$line[1]:\"\n  case $line[1] in\n";
  for (const auto& command : all.commands) text += zsh_case(command, all);
  return text + "  esac ;;\n  esac\n}\n\n_brimwright \"$@\"\n";
}

std::string fish_completions(const Command& all) {
  std::string text =
      "# Completion of brimwright for fish, made by brimwright completions fish.\n"
      "complete -c brimwright -f\n";
  const std::string first = " -n __fish_use_subcommand";
  for (const auto& option : all.options) text += fish_option(option, first);
  for (const auto& command : all.commands) {
    text += "complete -c brimwright" + first + " -a " + command.name + " -d '" +
            replaced(command.what, "'", "\\'") + "'\n";
    const std::string within = " -n '__fish_seen_subcommand_from " + command.name + "'";
    for (const auto& option : command.options) text += fish_option(option, within);
    for (const auto& argument : command.arguments)
      if (const auto takes = takes_of(argument, command, all);
          !takes.words.empty() || !takes.endings.empty() || takes.folders)
        text += "complete -c brimwright" + within + fish_values(takes) + "\n";
  }
  return text;
}

}  // namespace brimwright::cli
