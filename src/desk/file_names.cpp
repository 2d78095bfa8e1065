#include "desk/file_names.h"

#include "schemas/tidying.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <string_view>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

// The last two are what version 1 calls the two before them.
constexpr std::array<std::string_view, 8> naming = {
    "mould", "formula", "run", "file", "own_fats", "own_tips", "fats_from", "tips_from"};
constexpr std::string_view named_by_keys = "moulds_owned";

bool is_naming(std::string_view key) {
  return std::find(naming.begin(), naming.end(), key) != naming.end();
}

void look_in(const Json& json, std::vector<std::string>& names) {
  const auto take = [&](const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  if (json.is_array())
    for (const Json& element : json) look_in(element, names);
  if (!json.is_object()) return;
  for (const auto& [key, value] : json.items()) {
    if (is_naming(key) && value.is_string()) take(value.get<std::string>());
    if (key == named_by_keys && value.is_object())
      for (const auto& [name, owned] : value.items()) take(name);
    look_in(value, names);
  }
}

Json with_keys_renamed(const Json& object, const NewName& new_name) {
  Json renamed = Json::object();
  for (const auto& [name, value] : object.items()) renamed[new_name(name)] = value;
  return renamed;
}

}  // namespace

std::vector<std::string> file_names_in(const Json& document) {
  std::vector<std::string> names;
  look_in(document, names);
  return names;
}

void rename_files_in(Json& json, const NewName& new_name) {
  if (json.is_array())
    for (Json& element : json) rename_files_in(element, new_name);
  if (!json.is_object()) return;
  for (auto& [key, value] : json.items()) {
    if (is_naming(key) && value.is_string())
      value = new_name(value.get<std::string>());
    else if (key == named_by_keys && value.is_object())
      value = with_keys_renamed(value, new_name);
    else
      rename_files_in(value, new_name);
  }
}

std::string with_files_renamed(const std::string& text, const std::string& file,
                               const NewName& new_name) {
  return schemas::with_texts(text, file, [&](const schemas::TextPlace& place) {
    const bool is_name = place.is_key ? place.under == named_by_keys : is_naming(place.under);
    return is_name ? new_name(place.text) : place.text;
  });
}

}  // namespace brimwright::desk
