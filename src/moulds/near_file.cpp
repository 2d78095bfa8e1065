#include "moulds/near_file.h"

#include "units/fields.h"

#include <algorithm>
#include <filesystem>

namespace brimwright::moulds {

namespace fs = std::filesystem;

std::optional<std::string> near_file(const std::string& path) {
  const fs::path wanted(path);
  const fs::path folder = wanted.has_parent_path() ? wanted.parent_path() : fs::path(".");
  std::vector<std::string> names;
  std::error_code none;
  constexpr std::size_t enough = 2000;  // a folder to look through at a glance
  for (fs::directory_iterator at(folder, none), end; !none && at != end; at.increment(none)) {
    std::error_code error;
    if (at->is_regular_file(error)) names.push_back(at->path().filename().string());
    if (names.size() == enough) break;
  }
  std::sort(names.begin(), names.end());  // of two that are as near, always the same
  return nearest_name(wanted.filename().string(), names);
}

}  // namespace brimwright::moulds
