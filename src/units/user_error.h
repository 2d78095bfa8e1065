#pragma once

#include <stdexcept>
#include <string>

namespace brimwright {

/// Where something was given: a file (or "command line") and a place in it. The field is a JSON
/// pointer, a line, a place in millimetres in a mesh, or an option as typed; either may be empty.
struct Place {
  std::string file;
  std::string field;
};

/// A mistake in what was given, told in one line: which file, which field, what is wrong, what to
/// do. What was given is cut to a length that can be read; control codes in it are written out.
class UserError : public std::runtime_error {
 public:
  struct Parts {
    std::string file;
    std::string field;
    std::string problem;
    std::string remedy;
  };

  explicit UserError(Parts parts);
  UserError(const Place& place, std::string problem, std::string remedy);

  const Parts& parts() const { return parts_; }

 private:
  Parts parts_;
};

}  // namespace brimwright
