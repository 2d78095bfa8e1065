#include "moulds/near_file.h"

#include "units/fields.h"

#include <algorithm>
#include <system_error>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;

/// Adds to `names` how files in `folder`, and one folder further in, are named from `root`.
void list_files(const fs::path& root, const fs::path& folder, bool further_in,
                std::vector<std::string>& names) {
  constexpr std::size_t most = 5'000;  // a suggestion is not worth more looking
  std::error_code error;
  fs::directory_iterator at(folder, error);
  for (; !error && at != fs::directory_iterator() && names.size() < most; at.increment(error)) {
    std::error_code none;
    if (at->path().filename().native().front() == '.') continue;
    if (at->is_regular_file(none))
      names.push_back(at->path().lexically_relative(root).generic_string());
    else if (further_in && at->is_directory(none) && !at->is_symlink(none))
      list_files(root, at->path(), false, names);
  }
}

}  // namespace

std::optional<std::string> near_file(const std::string& name,
                                     const std::vector<fs::path>& folders) {
  std::vector<std::string> names;
  for (const fs::path& folder : folders) list_files(folder, folder, true, names);
  std::sort(names.begin(), names.end());
  const auto same = std::find_if(names.begin(), names.end(), [&](const std::string& known) {
    return fs::path(known).filename() == fs::path(name).filename();
  });
  return same != names.end() ? *same : nearest_name(name, names);
}

}  // namespace brimwright::moulds
