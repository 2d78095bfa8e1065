#pragma once

#include <istream>
#include <optional>
#include <string>

namespace brimwright::cli {

/// How the file is called that comes from standard input: as though it lay in the current folder.
inline constexpr auto standard_input = "standard input";

/// For `file`, the one that a command asks for: "-" becomes `standard_input`, and its text is
/// given, all there is of it in `in` up to a little more than a file may have. UserError where `in`
/// is missing or fails, and where `file` is not there, with a near name of its folder.
std::optional<std::string> taken_from(std::string& file, std::istream* in);

}  // namespace brimwright::cli
