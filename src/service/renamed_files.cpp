#include "service/renamed_files.h"

#include "units/fields.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <utility>

namespace brimwright::service {

namespace fs = std::filesystem;
using Json = nlohmann::json;

namespace {

/// All that makes it the thing it is; nothing of what is no JSON.
std::optional<std::string> said_in(const std::string& text) {
  Json json = Json::parse(text, nullptr, false);
  if (!json.is_object()) return std::nullopt;
  for (const char* key : {"$schema", "name", "note", "learned", "poured_factor", "measured_density",
                          "water_lost_in_cure"})
    json.erase(key);
  return json.dump();
}

std::string name_of(const std::string& path) { return fs::path(path).filename().generic_string(); }

}  // namespace

RenamedFiles::RenamedFiles(const records::Records& records, std::string folder,
                           const std::vector<std::string>& today)
    : records_(records), folder_(std::move(folder)) {
  for (const std::string& path : today) {
    names_today_.insert(name_of(path));
    try {
      if (const auto said = said_in(text_of_file(path))) today_.emplace(*said, name_of(path));
    } catch (const UserError&) {
      continue;  // one that cannot be read was not renamed
    }
  }
}

std::optional<std::string> RenamedFiles::called_now(const std::string& sources,
                                                    const std::string& name) {
  if (names_today_.contains(name)) return std::nullopt;
  const Names& names = names_of(sources);
  const auto found = names.find(name);
  return found == names.end() ? std::nullopt : std::optional(found->second);
}

const RenamedFiles::Names& RenamedFiles::names_of(const std::string& sources) {
  const auto [at, is_new] = found_.try_emplace(sources);
  if (!is_new) return at->second;
  for (const records::Source& source : records::sources_of(records_, sources)) {
    std::error_code none;
    if (!source.text || fs::exists(fs::path(folder_) / source.path, none)) continue;
    const auto said = said_in(*source.text);
    if (!said) continue;
    if (const auto today = today_.find(*said); today != today_.end())
      at->second.emplace(name_of(source.path), today->second);
  }
  return at->second;
}

}  // namespace brimwright::service
