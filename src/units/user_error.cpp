#include "units/user_error.h"

#include <utility>

namespace brimwright {
namespace {

/// A name typed or found in a file may hold anything; a line for a terminal must stay one line.
std::string on_one_line(const std::string& text) {
  std::string clean;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    clean += byte < 0x20 || byte == 0x7f ? '?' : c;
  }
  return clean;
}

std::string worded(const UserError::Parts& parts) {
  std::string line;
  if (!parts.file.empty()) line += parts.file + ": ";
  if (!parts.field.empty()) line += parts.field + ": ";
  line += parts.problem;
  if (!parts.remedy.empty()) line += "; " + parts.remedy;
  return on_one_line(line);
}

}  // namespace

UserError::UserError(Parts parts) : std::runtime_error(worded(parts)), parts_(std::move(parts)) {}

UserError::UserError(const Place& place, std::string problem, std::string remedy)
    : UserError(Parts{place.file, place.field, std::move(problem), std::move(remedy)}) {}

}  // namespace brimwright
