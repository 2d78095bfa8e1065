#include "geometry/files/scene_text.h"

#include "units/shown_text.h"
#include "units/user_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <limits>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Json = nlohmann::json;

[[noreturn]] void refuse(const std::string& file, const std::string& problem) {
  throw UserError({.file = file,
                   .field = "",
                   .problem = "is not a sound glTF file: it " + problem,
                   .remedy = "export it again, or as a binary STL"});
}

/// How deep lists and objects are nested at most.
std::size_t depth_of(std::string_view text) {
  std::size_t depth = 0, deepest = 0;
  bool in_string = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '"') in_string = !in_string;
    if (in_string) {
      if (c == '\\') ++i;
    } else if (c == '[' || c == '{') {
      deepest = std::max(deepest, ++depth);
    } else if ((c == ']' || c == '}') && depth > 0) {
      --depth;
    }
  }
  return deepest;
}

/// Not with the library's own callback for what to keep, which looks through all the elements of a
/// list after each.
Json parsed(std::string_view text, const std::string& file) {
  constexpr std::size_t longest = std::size_t{64} << 20, deepest = 64;  // our own bounds
  if (text.size() > longest) refuse(file, "has more than 64 MiB of text; .glb holds more");
  if (depth_of(text) > deepest) refuse(file, "is nested too deeply");
  Json scene = Json::parse(text, nullptr, false);
  if (!scene.is_object()) refuse(file, "breaks the rules of JSON");
  return scene;
}

/// Element `index` of a list of objects; refused if it is not there.
const Json& element(const Json& scene, const char* list, const Json& index,
                    const std::string& file) {
  if (scene.contains(list) && scene[list].is_array() && index.is_number_unsigned()) {
    const auto at = index.get<std::size_t>();
    if (at < scene[list].size() && scene[list][at].is_object()) return scene[list][at];
  }
  refuse(file, std::string("names one of its ") + list + " that is not there");
}

std::size_t whole(const Json& object, const char* key, std::size_t missing,
                  const std::string& file) {
  if (!object.contains(key)) return missing;
  if (!object[key].is_number_unsigned())
    refuse(file, std::string("has no whole number as \"") + key + "\"");
  return object[key].get<std::size_t>();
}

std::size_t triangles_of(const Json& primitive, const Json& scene, const std::string& file) {
  constexpr std::size_t triangles = 4;  // its mode; points and lines below it, strips above
  const std::size_t mode = whole(primitive, "mode", triangles, file);
  if (mode < triangles) return 0;
  if (mode > triangles) refuse(file, "has a mesh written as a strip or fan");
  const bool has_places = primitive.contains("attributes") && primitive["attributes"].is_object() &&
                          primitive["attributes"].contains("POSITION");
  if (!has_places) refuse(file, "has a mesh without corners");
  const Json& places = primitive["attributes"]["POSITION"];
  const Json& accessor = element(
      scene, "accessors", primitive.contains("indices") ? primitive["indices"] : places, file);
  const std::size_t corners = whole(accessor, "count", 0, file);
  if (corners % 3 != 0) refuse(file, "has a mesh whose corners are not three to a facet");
  return corners / 3;
}

/// A file beside it, which an upload leaves behind, is not opened.
void refuse_data_beside(const Json& scene, const std::string& file) {
  if (!scene.contains("buffers") || !scene["buffers"].is_array()) return;
  for (const Json& buffer : scene["buffers"]) {
    if (!buffer.is_object() || !buffer.contains("uri") || !buffer["uri"].is_string()) continue;
    const auto& uri = buffer["uri"].get_ref<const std::string&>();
    if (uri.starts_with("data:")) continue;
    throw UserError({.file = file,
                     .field = "",
                     .problem = "keeps its shapes in another file, \"" + shortened(uri, 80) +
                                "\", and only one file is read",
                     .remedy = "export it as GLB (.glb), or as glTF with embedded data"});
  }
}

void refuse_required(const Json& scene, const std::string& file) {
  if (!scene.contains("extensionsRequired")) return;
  if (!scene["extensionsRequired"].is_array()) refuse(file, "lists no extensions as required");
  for (const Json& name : scene["extensionsRequired"]) {
    // Of the ratified extensions these do not touch shapes (Khronos glTF extension registry).
    const std::string text = name.is_string() ? name.get<std::string>() : "";
    if (text.starts_with("KHR_materials_") || text == "KHR_texture_transform" ||
        text == "KHR_lights_punctual" || text == "KHR_texture_basisu") {
      continue;
    }
    refuse(file, "packs its meshes in a way that is not read here");
  }
}

/// Placings of a node must be numbers, as many as they should be; Assimp passes over others.
void check_placing(const Json& node, const std::string& file) {
  for (const auto& [key, size] : std::initializer_list<std::pair<const char*, std::size_t>>{
           {"translation", 3}, {"rotation", 4}, {"scale", 3}, {"matrix", 16}}) {
    if (!node.contains(key)) continue;
    const Json& list = node[key];
    const bool sound = list.is_array() && list.size() == size &&
                       std::all_of(list.begin(), list.end(), [](const Json& number) {
                         return number.is_number() &&
                                std::abs(number.get<double>()) <= std::numeric_limits<float>::max();
                       });
    if (!sound) refuse(file, std::string("has a node whose ") + key + " is no such thing");
  }
}

/// The children of node `number`, whose own facts are checked on the way.
std::vector<std::size_t> children_of(const Json& scene, std::size_t number,
                                     const std::string& file) {
  const Json& node = element(scene, "nodes", number, file);
  check_placing(node, file);
  if (node.contains("mesh")) element(scene, "meshes", node["mesh"], file);
  std::vector<std::size_t> children;
  if (!node.contains("children")) return children;
  if (!node["children"].is_array()) refuse(file, "has a node without a list of children");
  for (const Json& child : node["children"]) {
    element(scene, "nodes", child, file);
    children.push_back(child.get<std::size_t>());
  }
  return children;
}

/// Refuses nodes that are not there, and all but trees: a node in two places, or within itself,
/// which no root leads to.
void check_nodes(const Json& scene, const std::string& file) {
  constexpr std::size_t deepest = 1000;  // our own bound; Assimp goes down by calling itself
  if (!scene.contains("nodes")) return;
  if (!scene["nodes"].is_array()) refuse(file, "lists no nodes as its nodes");
  std::vector<std::vector<std::size_t>> children(scene["nodes"].size());
  std::vector<bool> has_parent(children.size(), false);
  for (std::size_t node = 0; node < children.size(); ++node) {
    children[node] = children_of(scene, node, file);
    for (const std::size_t child : children[node]) {
      if (has_parent[child]) refuse(file, "has a node in two places");
      has_parent[child] = true;
    }
  }
  std::vector<std::pair<std::size_t, std::size_t>> reached;  // with their depths
  for (std::size_t node = 0; node < children.size(); ++node)
    if (!has_parent[node]) reached.emplace_back(node, 0);
  for (std::size_t next = 0; next < reached.size(); ++next) {
    const auto [node, depth] = reached[next];
    if (depth > deepest) refuse(file, "has nodes within each other more than 1000 deep");
    for (const std::size_t child : children[node]) reached.emplace_back(child, depth + 1);
  }
  if (reached.size() < children.size()) refuse(file, "has a node within itself");
}

/// The nodes of each scene are there, each once.
void check_scenes(const Json& scene, const std::string& file) {
  if (scene.contains("scene")) element(scene, "scenes", scene["scene"], file);
  if (!scene.contains("scenes") || !scene["scenes"].is_array()) return;
  for (const Json& each : scene["scenes"]) {
    if (!each.is_object() || !each.contains("nodes")) continue;
    if (!each["nodes"].is_array()) refuse(file, "lists no nodes in a scene");
    std::vector<std::size_t> roots;
    for (const Json& root : each["nodes"]) {
      element(scene, "nodes", root, file);
      roots.push_back(root.get<std::size_t>());
    }
    std::sort(roots.begin(), roots.end());
    if (std::adjacent_find(roots.begin(), roots.end()) != roots.end())
      refuse(file, "has a node in two places");
  }
}

}  // namespace

std::size_t triangles_of_scene(std::string_view json, const std::string& file) {
  const Json scene = parsed(json, file);
  refuse_required(scene, file);
  refuse_data_beside(scene, file);
  check_nodes(scene, file);
  check_scenes(scene, file);
  if (!scene.contains("meshes") || !scene["meshes"].is_array()) return 0;
  std::size_t triangles = 0;
  for (const Json& mesh : scene["meshes"]) {
    if (!mesh.is_object() || !mesh.contains("primitives") || !mesh["primitives"].is_array())
      refuse(file, "has a mesh without facets");
    for (const Json& primitive : mesh["primitives"]) {
      if (!primitive.is_object()) refuse(file, "has a mesh without facets");
      triangles += triangles_of(primitive, scene, file);
    }
  }
  return triangles;
}

}  // namespace brimwright::geometry
