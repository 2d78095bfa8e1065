#include "service/same_soap.h"

#include "records/content_hash.h"
#include "schemas/tidying.h"
#include "units/fields.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <optional>
#include <set>
#include <string_view>

namespace brimwright::service {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

/// What says nothing of the piece itself, wherever it stands.
const std::set<std::string_view> never = {
    "$schema",  "schema", "note",     "confirmed", "learned",      "document", "lot",
    "lye_from", "blend",  "own_fats", "own_tips",  "moulds_owned", "name_at",  "temperatures"};
const std::set<std::string_view> not_of_run = {
    "name",  "id",    "made_on", "due",   "for",  "sell",    "spoilage", "packaging",
    "money", "label", "bottles", "batch", "pots", "lye_pot", "losses",   "scales"};
const std::set<std::string_view> not_of_pipe = {"whip", "whip_now", "bag_holds",
                                                "bowl", "pace",     "lye_spoon"};
const std::set<std::string_view> not_of_decoration = {"time_per_tray_fill", "melt_loss",
                                                      "left_in_jug", "spares"};
const std::set<std::string_view> not_of_formula = {
    "name",       "measured_density",   "cure",   "unmould_after",
    "cut_within", "water_lost_in_cure", "drying", "pour_temperature"};
/// Of what is in a formula: the analysis of a lot.
const std::set<std::string_view> not_of_ingredient = {
    "saponification_value", "purity", "purity_range", "bulk_density", "density", "limit"};
const std::set<std::string_view> not_of_mould = {"name",  "owned",         "cavities",
                                                 "bends", "unmould_after", "poured_factor"};

void drop(Json& json, const std::set<std::string_view>& keys) {
  if (!json.is_object()) return;
  for (auto at = json.begin(); at != json.end();)
    at = keys.contains(at.key()) ? json.erase(at) : std::next(at);
}

void drop_everywhere(Json& json, const std::set<std::string_view>& keys) {
  drop(json, keys);
  if (json.is_structured())
    for (Json& each : json) drop_everywhere(each, keys);
}

void drop_in_each(Json& json, const char* list, const std::set<std::string_view>& keys) {
  if (json.contains(list) && json[list].is_array())
    for (Json& each : json[list]) drop(each, keys);
}

/// What of a document makes the piece.
Json essence_of(Json json) {
  const std::string schema = json.contains("schema") && json["schema"].is_string()
                                 ? json["schema"].get<std::string>()
                                 : std::string();
  drop_everywhere(json, never);
  if (schema.starts_with("brimwright.formula/")) {
    drop(json, not_of_formula);
    for (const char* list : {"fats", "alkali", "additives", "fragrances", "colours", "liquids"})
      drop_in_each(json, list, not_of_ingredient);
  } else if (schema.starts_with("brimwright.mould/")) {
    drop(json, not_of_mould);
  } else {
    drop(json, not_of_run);
    if (json.contains("pipe")) {
      drop(json["pipe"], not_of_pipe);
      for (const char* way : {"trials", "envelope"})  // how well its size is known
        if (json["pipe"].contains(way)) drop(json["pipe"][way], {"volume_each", "soap_share"});
    }
    drop_in_each(json, "decorations", not_of_decoration);
  }
  return json;
}

/// A file that a document names: its text, or of a mesh its SHA-256.
struct Named {
  std::string name;
  std::optional<std::string> text = {}, sha256 = {};
};
using Finding = std::function<std::optional<Named>(const std::string& name, const Named& in)>;

/// One file that a piece is made by, as far as it says how.
struct Part {
  std::string name, says;
};

bool names_a_file(const std::string& text) {
  static constexpr std::array endings = {".json", ".stl", ".obj",  ".ply",
                                         ".off",  ".3mf", ".gltf", ".glb"};
  return std::any_of(endings.begin(), endings.end(),
                     [&](const char* ending) { return text.ends_with(ending); });
}

/// A document and all that it names, in the order of its keys; names of files say nothing.
class Gathering {
 public:
  explicit Gathering(Finding find) : find_(std::move(find)) {}

  std::vector<Part> parts(const Named& run) {
    add(run);
    return std::move(parts_);
  }

 private:
  void add(const Named& named) {
    constexpr std::size_t most_files = 200;
    if (parts_.size() >= most_files) return;
    const std::size_t at = parts_.size();
    parts_.push_back({named.name, named.sha256.value_or("")});
    if (!named.text) return;
    Json json = essence_of(Json::parse(schemas::tidied(*named.text, named.name).text));
    follow(json, named);
    parts_[at].says = json.dump();
  }

  void follow(Json& json, const Named& in) {
    if (json.is_string() && names_a_file(json.get<std::string>())) {
      if (const auto named = find_(json.get<std::string>(), in)) {
        json = "a file";
        add(*named);
      }
    } else if (json.is_structured()) {
      for (Json& each : json) follow(each, in);
    }
  }

  Finding find_;
  std::vector<Part> parts_;
};

std::optional<Named> in_sources(const std::vector<records::Source>& frozen, const std::string& name,
                                const Named& in) {
  constexpr std::string_view built_in = "built-in: ";
  const bool is_in_built_in = in.name.starts_with(built_in);
  const fs::path folder =
      fs::path(is_in_built_in ? in.name.substr(built_in.size()) : in.name).parent_path();
  const std::string beside = (folder / name).lexically_normal().string();
  for (const std::string& wanted :
       {is_in_built_in ? std::string(built_in) + beside : beside, std::string(built_in) + name})
    for (const auto& source : frozen)
      if (source.path == wanted) return Named{source.path, source.text, source.sha256};
  const fs::path last = fs::path(name).filename();  // from a folder that was given by hand
  for (const auto& source : frozen)
    if (fs::path(source.path).filename() == last)
      return Named{source.path, source.text, source.sha256};
  return std::nullopt;
}

std::optional<Named> on_disk(const std::string& name, const Named& in,
                             const moulds::Library& library) {
  Named found{.name = library.resolve(name, {in.name, ""})};
  if (found.name.ends_with(".json")) {
    found.text = text_of_file(found.name);
  } else {
    std::ifstream file(found.name, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    found.sha256 = records::content_hash(bytes);
  }
  return found;
}

std::vector<Part> parts_then(const std::vector<records::Source>& frozen, const std::string& run) {
  const auto find = [&](const std::string& name, const Named& in) {
    return in_sources(frozen, name, in);
  };
  const auto its = find(run, {});
  return its ? Gathering(find).parts(*its) : std::vector<Part>{};
}

std::string shown(const std::string& name) { return fs::path(name).filename().string(); }

}  // namespace

std::vector<std::string> changed_since(const std::vector<records::Source>& frozen,
                                       const std::string& run_then, const std::string& file,
                                       const moulds::Library& library) {
  std::vector<std::string> changed;
  try {
    const auto today = Gathering([&](const std::string& name, const Named& in) {
                         return on_disk(name, in, library);
                       }).parts({.name = file, .text = text_of_file(file)});
    const auto then = parts_then(frozen, run_then);
    if (then.empty()) return {shown(file)};
    for (std::size_t i = 0; i < today.size(); ++i)
      if (i >= then.size() || then[i].says != today[i].says)
        changed.push_back(shown(today[i].name));
    if (then.size() > today.size() && changed.empty()) changed.push_back(shown(file));
  } catch (const std::exception&) {
    return {shown(file)};  // what cannot be read is not known to be the same
  }
  return changed;
}

}  // namespace brimwright::service
