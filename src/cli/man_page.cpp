#include "cli/man_page.h"

#include "cli/version.h"
#include "units/shown_text.h"

#include <cstdio>

namespace brimwright::cli {
namespace {

/// `text` so that groff takes nothing of it for its own; hyphens stay hyphens when copied.
std::string plain(const std::string& text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const auto [bytes, number] = first_character(std::string_view(text).substr(at));
    const char c = text[at];
    if (bytes > 1 && number) {
      char code[16];
      std::snprintf(code, sizeof code, "\\[u%04X]", static_cast<unsigned>(*number));
      out += code;
    } else if (c == '\\') {
      out += "\\e";
    } else if (c == '-') {
      out += "\\-";
    } else {
      const bool begins_line = at == 0 || text[at - 1] == '\n';
      if (begins_line && (c == '.' || c == '\'')) out += "\\&";
      out += c;
    }
    at += bytes;
  }
  return out;
}

std::string item(const std::string& left, const std::string& right) {
  return ".TP\n" + left + "\n" + plain(right) + "\n";
}

std::string as_it_stands(const std::string& text) {
  return text.empty() ? ""
                      : ".PP\n.nf\n" + plain(text) + (text.ends_with('\n') ? "" : "\n") + ".fi\n";
}

std::string option_text(const CommandOption& option) {
  std::string names;
  for (const auto& name : option.names)
    names += (names.empty() ? "" : ", ") + ("\\fB" + plain(name) + "\\fR");
  if (!option.value.empty()) names += " \\fI" + plain(option.value) + "\\fR";
  return item(names, option.what + (option.repeats ? "; repeatable" : "") + ".");
}

std::string command_text(const Command& command) {
  std::string text = ".SS \"brimwright " + plain(command.name) + " " + plain(usage_of(command)) +
                     "\"\n" + plain(command.what) + ".\n";
  for (const auto& argument : command.arguments)
    text += item("\\fI" + plain(argument.name) + "\\fR", argument.what + ".");
  for (const auto& option : command.options) text += option_text(option);
  return text + as_it_stands(command.teaching);
}

}  // namespace

std::string man_page(const Command& all) {
  std::string text = ".TH BRIMWRIGHT 1 \"\" \"brimwright " + std::string(version) +
                     "\" \"User Commands\"\n.SH NAME\nbrimwright \\- from a mould to weighed soap "
                     "ingredients\n.SH SYNOPSIS\n.B brimwright\n" +
                     plain(usage_of(all)) + "\n.SH DESCRIPTION\n" + plain(all.what) + "\n";
  text += ".SH OPTIONS\n";
  for (const auto& option : all.options) text += option_text(option);
  text += as_it_stands(all.teaching) + ".SH COMMANDS\n";
  for (const auto& command : all.commands) text += command_text(command);
  text += ".SH ENVIRONMENT\n" +
          item("\\fBNO_COLOR\\fR", "If set and not empty, nothing is shown in colour.") +
          item("\\fBTERM\\fR", "If \"dumb\" or not set, nothing is shown in colour.");
  return text;
}

}  // namespace brimwright::cli
