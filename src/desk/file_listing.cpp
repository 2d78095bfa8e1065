#include "desk/clock.h"
#include "desk/folder_files.h"
#include "desk/uploads.h"
#include "desk/workspace.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <set>
#include <utility>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

struct Kind {
  const char *kind, *list;  // as in "schema", and as the page is told
  bool is_used;             // by other files, which name it
};
constexpr Kind kinds[] = {{"run", "runs", true},         {"mould", "moulds", true},
                          {"formula", "formulas", true}, {"fats", "fats", true},
                          {"tips", "tips", true},        {"studio", "studios", false},
                          {"order", "orders", false}};

/// Lists by kind; of two files with one name, the one that the name leads to.
class Listing {
 public:
  Listing(FileFactsMemory& memory, const FolderFiles& own) : memory_(memory), own_(own) {}

  /// The files of the folder that is served.
  void add_own(const fs::path& folder, const FilesFound& found) {
    if (found.is_cut) tell_cut(folder);
    for (const auto& document : own_.documents()) {
      Json* listed = add(document.name, document.known->facts, false);
      if (listed != nullptr) tell_more(*listed, document);
    }
    add_meshes(folder, found, false);
  }

  /// The files in `folder`, by the names that lead there from `root`.
  void add(const fs::path& root, const fs::path& folder) {
    const FilesFound found = files_in(folder);
    add_meshes(root, found, true);
    if (found.is_cut) tell_cut(folder);
    for (const fs::path& file : found.files)
      if (file.extension() == ".json")
        add(file.lexically_relative(root).string(), memory_.of(file.string())->facts, true);
  }

  const Json& cut() const { return cut_; }

  Json take(const char* list) {
    const auto at = lists_.find(list);
    return at == lists_.end() ? Json::array() : std::move(*at);
  }

 private:
  void add_meshes(const fs::path& root, const FilesFound& found, bool is_shipped) {
    for (const fs::path& file : found.files) {
      const std::string name = file.lexically_relative(root).string();
      if (is_mesh_name(name) && taken_.insert(name).second)
        lists_["meshes"].push_back({{"file", name}, {"name", name}, {"shipped", is_shipped}});
    }
  }

  Json* add(const std::string& name, const FileFacts& facts, bool is_shipped) {
    for (const Kind& kind : kinds) {
      if (facts.kind != kind.kind || !taken_.insert(name).second) continue;
      Json& list = lists_[kind.list];
      list.push_back(
          {{"file", name}, {"name", facts.name}, {"note", facts.note}, {"shipped", is_shipped}});
      if (!facts.holds.empty()) list.back()["holds"] = facts.holds;
      return &list.back();
    }
    return nullptr;
  }

  void tell_cut(const fs::path& folder) {
    cut_.push_back({{"folder", folder.string()}, {"looked_at", most_entries}});
  }

  /// What is told of her own files alone.
  void tell_more(Json& listed, const FolderFiles::Document& document) const {
    const FileFacts& facts = document.known->facts;
    listed["changed"] = moment_in_words(document.known->changed);
    if (facts.made_on) listed["made_on"] = *facts.made_on;
    if (facts.due) listed["due"] = *facts.due;
    if (facts.sell) listed["pieces"] = *facts.sell;
    if (const auto mould = mould_of(document); !mould.empty()) listed["mould"] = mould;
    for (const Kind& kind : kinds)
      if (kind.is_used && facts.kind == kind.kind) listed["used_by"] = own_.users_of(document.path);
  }

  /// What the mould of a run is called.
  std::string mould_of(const FolderFiles::Document& document) const {
    const std::string& named = document.known->facts.mould;
    const std::string file = named.empty() ? "" : own_.meant(named, document.path);
    return file.empty() ? "" : memory_.of(file)->facts.name;
  }

  FileFactsMemory& memory_;
  const FolderFiles& own_;
  std::set<std::string> taken_;
  Json lists_ = Json::object();
  Json cut_ = Json::array();
};

/// The run that is shown where none is wanted: her own that was changed last; of the shipped ones,
/// one that has every part.
Json shown_first(const Json& runs) {
  constexpr const char* with_every_part = "examples/spring_cups.run.json";
  const Json* first = nullptr;
  for (const Json& run : runs) {
    if (run["shipped"]) {
      if (first == nullptr && run["file"] == with_every_part) first = &run;
    } else if (first == nullptr || (*first)["shipped"] || (*first)["changed"] < run["changed"]) {
      first = &run;
    }
  }
  return first == nullptr ? Json(nullptr) : (*first)["file"];
}

}  // namespace

Json Workspace::files(const std::optional<std::string>& open) const {
  const FilesFound found = files_in(folder_);
  const FolderFiles own(folder_, found, library_, facts_);
  Listing listing(facts_, own);
  listing.add_own(folder_, found);
  for (const char* part : {"examples", "moulds", "meshes"})
    if (!library_.shipped.empty()) listing.add(library_.shipped, fs::path(library_.shipped) / part);
  for (const auto& folder : library_.folders) listing.add(folder, folder);
  Json json = {{"folder", folder_}, {"open", nullptr}};
  std::error_code none;
  if (open && fs::exists(fs::path(folder_) / *open, none)) json["open"] = *open;
  for (const Kind& kind : kinds) json[kind.list] = listing.take(kind.list);
  json["shown_first"] = shown_first(json["runs"]);
  json["meshes"] = listing.take("meshes");
  json["cut"] = listing.cut();
  return json;
}

}  // namespace brimwright::desk
