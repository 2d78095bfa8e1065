#include "desk/renaming.h"

#include "desk/file_names.h"
#include "schemas/kinds.h"
#include "schemas/tidying.h"
#include "units/guarded_json.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <optional>
#include <vector>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

struct Move {
  std::string from, to;
  const moulds::Library& library;

  std::optional<std::string> meant(const std::string& name, const std::string& file) const {
    try {
      return library.resolve(name, {file, ""});
    } catch (const UserError&) {
      return std::nullopt;
    }
  }

  std::string renamed(const std::string& name) const {
    const auto target = meant(name, from);
    if (!target || meant(name, to) == target) return name;
    std::vector<fs::path> roots = {fs::path(to).parent_path(), library.shipped};
    roots.insert(roots.end(), library.folders.begin(), library.folders.end());
    for (const fs::path& root : roots) {
      std::error_code error;
      const fs::path there = fs::canonical(root, error);
      if (error) continue;
      std::string candidate = fs::path(*target).lexically_relative(there).string();
      if (!candidate.empty() && !candidate.starts_with("..") && meant(candidate, to) == target)
        return candidate;
    }
    return name;
  }
};

}  // namespace

std::string moved(const std::string& text, const std::string& from, const std::string& to,
                  const moulds::Library& library) {
  const Move move{from, to, library};
  return with_files_renamed(text, from, [&](const std::string& name) {
    std::string renamed = move.renamed(name);
    if (const auto target = move.meant(name, from); target && move.meant(renamed, to) != target)
      throw UserError({"", "to"}, "\"" + name + "\", which it names, is not found from there",
                      "leave it in its folder");
    return renamed;
  });
}

std::string named_from(const std::string& text, const std::string& from, const std::string& to,
                       const moulds::Library& library) {
  Json json = parsed_json(text, to);
  if (json.is_object()) json.erase("$schema");
  const Move move{from, to, library};
  rename_files_in(json, [&](const std::string& name) { return move.renamed(name); });
  const Json schema = json.is_object() ? json.value("schema", Json()) : Json();
  const bool has_id = schema == schemas::run().today() || schema == schemas::order().today();
  if (!has_id) return json.dump(2) + "\n";
  json.erase("id");
  return schemas::with_id(json.dump(2) + "\n", schemas::new_id(), to);
}

}  // namespace brimwright::desk
