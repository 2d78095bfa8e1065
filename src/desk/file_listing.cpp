#include "desk/plain_reading.h"
#include "desk/uploads.h"
#include "desk/workspace.h"
#include "units/guarded_json.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>
#include <vector>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

// More than a studio keeps in one folder; a start in "/" must not read the whole disk.
constexpr std::size_t most_entries = 2000;
constexpr std::size_t longest_document = 256u << 10;  // larger ones are not looked into

struct Kind {
  const char *kind, *list;  // as in "schema", and as the page is told
};
constexpr Kind kinds[] = {{"run", "runs"},  {"mould", "moulds"}, {"formula", "formulas"},
                          {"fats", "fats"}, {"tips", "tips"},    {"studio", "studios"}};

struct Found {
  std::vector<fs::path> files;
  bool is_cut = false;  // there were more entries than are looked at
};

/// The files of a folder and of its subfolders, in the order of their names, hidden ones left out.
Found files_in(const fs::path& folder) {
  Found found;
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

/// Lists by kind; of two files with one name, the one that the name leads to.
class Listing {
 public:
  /// The files in `folder`, by the names that lead there from `root`.
  void add(const fs::path& root, const fs::path& folder, bool is_shipped) {
    const Found found = files_in(folder);
    if (found.is_cut) cut_.push_back({{"folder", folder.string()}, {"looked_at", most_entries}});
    for (const fs::path& file : found.files) {
      const std::string name = file.lexically_relative(root).string();
      if (is_mesh_name(name) && taken_.insert(name).second)
        lists_["meshes"].push_back({{"file", name}, {"name", name}, {"shipped", is_shipped}});
      else if (file.extension() == ".json")
        add_document(file, name, is_shipped);
    }
  }

  const Json& cut() const { return cut_; }

  Json take(const char* list) {
    const auto at = lists_.find(list);
    return at == lists_.end() ? Json::array() : std::move(*at);
  }

 private:
  void add_document(const fs::path& file, const std::string& name, bool is_shipped) try {
    const Json json = parsed_json(plain_file(file.string(), longest_document), name);
    const auto text = [&](const char* key) {
      const auto at = json.find(key);
      return at != json.end() && at->is_string() ? at->get<std::string>() : std::string();
    };
    if (!json.is_object()) return;
    for (const auto& [kind, list] : kinds)
      if (text("schema").starts_with(std::string("brimwright.") + kind + "/") &&
          taken_.insert(name).second)
        lists_[list].push_back({{"file", name},
                                {"name", text("name")},
                                {"note", text("note")},
                                {"shipped", is_shipped}});
  } catch (const UserError&) {
    // Not one of ours, or half-written by somebody: nothing to choose.
  }

  std::set<std::string> taken_;
  Json lists_ = Json::object();
  Json cut_ = Json::array();
};

}  // namespace

Json Workspace::files(const std::optional<std::string>& open) const {
  Listing listing;
  listing.add(folder_, folder_, false);
  for (const char* part : {"examples", "moulds", "meshes"})
    if (!library_.shipped.empty())
      listing.add(library_.shipped, fs::path(library_.shipped) / part, true);
  for (const auto& folder : library_.folders) listing.add(folder, folder, true);
  Json json = {{"folder", folder_}, {"open", nullptr}};
  if (open) json["open"] = *open;
  for (const auto& [kind, list] : kinds) json[list] = listing.take(list);
  json["meshes"] = listing.take("meshes");
  json["cut"] = listing.cut();
  return json;
}

}  // namespace brimwright::desk
