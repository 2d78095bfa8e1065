#include "cli/suggestions.h"

#include "moulds/near_file.h"
#include "units/fields.h"

#include <filesystem>

namespace brimwright::cli {

std::string meant(const std::string& typed, const std::vector<std::string>& known,
                  const std::string& otherwise) {
  const auto near = nearest_name(typed, known);
  return near ? "did you mean \"" + *near + "\"?" : otherwise;
}

std::string meant_file(const std::string& path, const std::string& otherwise) {
  const std::filesystem::path wanted(path);
  const auto folder = wanted.has_parent_path() ? wanted.parent_path() : std::filesystem::path(".");
  const auto near = moulds::near_file(wanted.filename().string(), {folder});
  if (!near) return otherwise;
  return "did you mean \"" + std::filesystem::path(path).replace_filename(*near).string() + "\"?";
}

}  // namespace brimwright::cli
