#include "desk/folder_files.h"

#include "units/user_error.h"

#include <algorithm>
#include <system_error>

namespace brimwright::desk {

namespace fs = std::filesystem;

FilesFound files_in(const fs::path& folder) {
  FilesFound found;
  std::error_code none;
  fs::recursive_directory_iterator at(folder, fs::directory_options::skip_permission_denied, none);
  for (std::size_t seen = 0; !none && at != fs::recursive_directory_iterator(); ++seen) {
    if (seen >= most_entries) {
      found.is_cut = true;
      break;
    }
    const bool is_hidden = at->path().filename().native().front() == '.';
    if (at.depth() > 0 || is_hidden) at.disable_recursion_pending();
    if (!is_hidden && at->is_regular_file(none)) found.files.push_back(at->path());
    none.clear();
    at.increment(none);
  }
  std::sort(found.files.begin(), found.files.end());
  return found;
}

FolderFiles::FolderFiles(const std::string& folder, const FilesFound& found,
                         const moulds::Library& library, FileFactsMemory& memory)
    : library_(library) {
  for (const fs::path& file : found.files) {
    if (file.extension() != ".json") continue;
    auto known = memory.of(file.string());
    if (known->facts.kind.empty()) continue;
    users_.emplace(file.string(), std::vector<std::string>());
    documents_.push_back(
        {file.string(), file.lexically_relative(folder).string(), std::move(known)});
  }
  for (const Document& document : documents_)
    for (const std::string& name : document.known->facts.names) {
      const auto used = users_.find(meant(name, document.path));
      if (used != users_.end()) used->second.push_back(document.name);
    }
}

const std::string& FolderFiles::meant(const std::string& name, const std::string& path) const {
  const auto [at, is_new] =
      meant_.try_emplace(std::pair(fs::path(path).parent_path().string(), name));
  if (is_new) at->second = looked_up(name, path);
  return at->second;
}

/// A file beside the document, or below, comes first, and is known without asking the system. For a
/// name that leads nowhere the library would look for one like it, which takes long.
std::string FolderFiles::looked_up(const std::string& name, const std::string& path) const {
  const fs::path folder = fs::path(path).parent_path();
  const fs::path beside = (folder / name).lexically_normal();
  const bool is_below = !beside.lexically_relative(folder).string().starts_with("..");
  if (is_below && users_.contains(beside.string())) return beside.string();
  std::vector<fs::path> roots = {folder, library_.shipped};
  roots.insert(roots.end(), library_.folders.begin(), library_.folders.end());
  const bool is_anywhere = std::any_of(roots.begin(), roots.end(), [&](const fs::path& root) {
    std::error_code none;
    return !root.empty() && fs::is_regular_file(root / name, none);
  });
  if (!is_anywhere) return {};
  try {
    return library_.resolve(name, {path, ""});
  } catch (const UserError&) {
    return {};
  }
}

std::vector<std::string> FolderFiles::users_of(const std::string& path) const {
  const auto at = users_.find(path);
  return at == users_.end() ? std::vector<std::string>() : at->second;
}

}  // namespace brimwright::desk
