#pragma once

#include <string>

namespace brimwright::cli {

/// A text for people with its dangers in red and its headings in bold, for a terminal that shows
/// colours; nothing is said by colour alone. A danger begins with "!! " and goes on in lines
/// indented by three; a heading is a line that begins with two capitals or more ("POUR  Base").
std::string coloured(const std::string& text);

}  // namespace brimwright::cli
