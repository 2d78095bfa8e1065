#include "moulds/library.h"

#include "moulds/near_file.h"
#include "units/question.h"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace brimwright::moulds {
namespace {

namespace fs = std::filesystem;

/// `path` without links, dots or a trailing slash; what does not exist keeps its name. Empty if the
/// system cannot say (a loop of links, a name too long).
fs::path canonical_or_empty(const fs::path& path) {
  std::error_code error;
  fs::path canonical = fs::weakly_canonical(fs::absolute(path, error), error);
  if (error) return {};
  return canonical.has_filename() ? canonical : canonical.parent_path();
}

bool lies_in(const fs::path& file, const fs::path& folder) {
  if (folder.empty()) return false;
  return std::mismatch(folder.begin(), folder.end(), file.begin(), file.end()).first ==
         folder.end();
}

bool is_plain(const std::string& name) {
  return !name.empty() && std::none_of(name.begin(), name.end(), [](char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
  });
}

bool is_file(const fs::path& path) {
  std::error_code error;
  return fs::is_regular_file(path, error);
}

/// The folders that a name written in `file` may lead into: the file's own, the shipped, the given.
std::vector<fs::path> folders_for(const Library& library, const std::string& file) {
  std::vector<fs::path> folders;
  if (!file.empty()) folders.push_back(canonical_or_empty(file).parent_path());
  if (!library.shipped.empty()) folders.push_back(canonical_or_empty(library.shipped));
  for (const std::string& folder : library.folders)
    if (!folder.empty()) folders.push_back(canonical_or_empty(folder));
  return folders;
}

std::string listed(const std::vector<fs::path>& folders) {
  std::string list;
  for (const fs::path& folder : folders) list += (list.empty() ? "" : ", ") + folder.string();
  return list;
}

}  // namespace

Fields Library::document(const std::string& file) const {
  return read_once ? read_once->document(file) : Fields::read(file);
}

std::string Library::resolve(const std::string& name, const Place& where) const {
  if (!is_plain(name))
    throw UserError(where, "is not a file name", "give one, such as \"moulds/plain_bar.json\"");
  const std::vector<fs::path> roots = folders_for(*this, where.file);
  std::optional<fs::path> outside;  // a file that is there, but may not be read
  bool leaves = false;
  for (const fs::path& folder : roots) {
    const fs::path file = canonical_or_empty(folder / name);  // an absolute name stands for itself
    const bool inside = std::any_of(roots.begin(), roots.end(),
                                    [&](const fs::path& root) { return lies_in(file, root); });
    if (inside && is_file(file)) {
      if (named) named->push_back(file.string());
      return file.string();
    }
    if (!inside) leaves = true;
    if (!inside && !outside && is_file(file)) outside = file;
  }
  const std::string quoted = "\"" + name + "\"";
  // Said to the person whose files these are, on the machine they are on; nothing of it is read.
  if (outside)
    throw Question({.file = where.file,
                    .field = where.field,
                    .asks = "",
                    .problem = quoted + " is there, as " + outside->string() +
                               ", but not in any folder brimwright may read: " + listed(roots),
                    .remedy = "copy it beside this file, or allow its folder with " +
                              Answer{"library", outside->parent_path().string()}});
  if (const auto meant = leaves ? std::nullopt : near_file(name, roots))
    throw UserError(where, "there is no file " + quoted + "; looked in " + listed(roots),
                    "did you mean \"" + *meant + "\"?");
  throw UserError(
      where, "there is no file " + quoted + "; looked in " + listed(roots),
      std::string("check the name, which counts from this file's own folder") +
          (leaves ? "; as it is, it leads out of the folders that brimwright may read" : ""));
}

}  // namespace brimwright::moulds
