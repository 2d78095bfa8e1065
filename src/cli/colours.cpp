#include "cli/colours.h"

#include <algorithm>

namespace brimwright::cli {
namespace {

bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }

bool is_heading(const std::string& line) {
  return line.size() > 2 && is_capital(line[0]) && is_capital(line[1]);
}

// ECMA-48, SGR: 1 bold, 31 red, 0 as before.
constexpr auto red = "\x1b[1;31m", bold = "\x1b[1m", plain = "\x1b[0m";

}  // namespace

std::string coloured(const std::string& text) {
  std::string shown;
  bool in_danger = false;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string line = text.substr(at, end - at);
    in_danger = line.starts_with("!! ") || (in_danger && line.starts_with("   "));
    const char* colour = in_danger ? red : is_heading(line) ? bold : nullptr;
    shown += colour == nullptr ? line : colour + line + plain;
    if (end < text.size()) shown += "\n";
    at = end + 1;
  }
  return shown;
}

}  // namespace brimwright::cli
