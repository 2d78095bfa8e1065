#include "cli/option_terms.h"

namespace brimwright::cli {
namespace {

/// A cavity's solid is written by `gauge --write`, all else by the option of its name.
std::string option(const std::string& member) {
  if (member == "list") return member;
  if (member == "folder") return "FOLDER";
  if (member == "what") return "WHAT";
  return "--" + (member == "stl" ? "write" : member);
}

}  // namespace

UserTerms option_terms() {
  return {.place =
              [](const std::string& member) {
                return Place{"command line", option(member)};
              },
          .say =
              [](const Answer& answer) {
                return option(answer.member) + (answer.value.empty() ? "" : " " + answer.value);
              },
          .one = "option"};
}

}  // namespace brimwright::cli
