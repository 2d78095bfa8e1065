#pragma once

#include "units/question.h"
#include "units/user_error.h"

#include <ostream>
#include <string>
#include <vector>

namespace brimwright::cli {

/// How a complaint is said: for people, or with --json for programs.
enum class Voice { text, json };

/// One line on `err`: `line` for people, whatever stands in names and files, so that no terminal
/// obeys it; for programs one line of JSON in ASCII, schema brimwright.complaint/1, of `parts` and
/// of the options that would answer.
void complain(std::ostream& err, Voice voice, const std::string& line,
              const UserError::Parts& parts, const std::vector<Choice>& choices = {});

/// A fault of ours, which has no parts.
void complain_of_fault(std::ostream& err, Voice voice, const std::string& line);

}  // namespace brimwright::cli
