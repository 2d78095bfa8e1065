#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::web {

/// "/api/file?file=cup.json" apart, the query decoded. Nothing if it is no path from the root,
/// holds control characters, or a broken or NUL escape, or names a field twice.
struct Target {
  std::string path;
  std::map<std::string, std::string> query;
};
std::optional<Target> target_of(std::string_view text);

}  // namespace brimwright::web
