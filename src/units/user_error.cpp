#include "units/user_error.h"

#include "units/shown_text.h"

#include <utility>

namespace brimwright {
namespace {

// A complaint is one line to be read: these hold every line of our own words, and a path as long as
// people have; what was given is cut to fit.
constexpr std::size_t longest_path = 300, longest_field = 300, longest_problem = 600,
                      longest_remedy = 1200;

UserError::Parts cut(UserError::Parts parts) {
  parts.field = shortened(parts.field, longest_field);
  parts.problem = shortened(parts.problem, longest_problem);
  parts.remedy = shortened(parts.remedy, longest_remedy);
  return parts;
}

std::string worded(const UserError::Parts& parts) {
  std::string line;
  if (!parts.file.empty()) line += shortened(parts.file, longest_path) + ": ";
  if (!parts.field.empty()) line += parts.field + ": ";
  line += parts.problem;
  if (!parts.remedy.empty()) line += "; " + parts.remedy;
  return on_one_line(line);
}

}  // namespace

UserError::UserError(Parts parts)
    : std::runtime_error(worded(cut(parts))), parts_(cut(std::move(parts))) {}

UserError::UserError(const Place& place, std::string problem, std::string remedy)
    : UserError(Parts{place.file, place.field, std::move(problem), std::move(remedy)}) {}

}  // namespace brimwright
