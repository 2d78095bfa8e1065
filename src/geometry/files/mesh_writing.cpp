#include "geometry/files/mesh_writing.h"

#include "geometry/surface/vectors.h"
#include "geometry/surface/weld.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <stdexcept>
#include <string_view>

namespace brimwright::geometry {
namespace {

using Json = nlohmann::ordered_json;
using Floats = std::array<float, 3>;

static_assert(std::endian::native == std::endian::little);  // as both formats are

template <class Number>
void append(std::string& bytes, Number number) {
  const auto raw = std::bit_cast<std::array<char, sizeof number>>(number);
  bytes.append(raw.data(), raw.size());
}

std::uint32_t counted(std::size_t number) {
  if (number > std::numeric_limits<std::uint32_t>::max())
    throw std::length_error("the mesh is too large for its file format");
  return static_cast<std::uint32_t>(number);
}

Floats in_single(const Point& p) {
  return {static_cast<float>(p[0]), static_cast<float>(p[1]), static_cast<float>(p[2])};
}

/// Of length one, or zero for a facet without area, as readers take for "not given".
Floats normal_of(const Point& a, const Point& b, const Point& c) {
  const Vector n = doubled_area(a, b, c);
  const double length = std::hypot(n[0], n[1], n[2]);
  if (!(length > 0)) return {};
  return in_single({n[0] / length, n[1] / length, n[2] / length});
}

/// Every part's piece of the binary chunk, and the JSON that tells where it lies.
class Gltf {
 public:
  void add(const ColouredPart& part) {
    TriangleMesh mesh = part.mesh;
    drop_unused_vertices(mesh);
    const auto number = json_["nodes"].size();
    json_["scenes"][0]["nodes"].push_back(number);
    json_["nodes"].push_back({{"name", part.name}, {"mesh", number}});
    json_["materials"].push_back(material_of(part));
    const std::size_t positions = add_positions(mesh);
    const std::size_t indices = add_indices(mesh);
    json_["meshes"].push_back({{"name", part.name},
                               {"primitives",
                                {{{"attributes", {{"POSITION", positions}}},
                                  {"indices", indices},
                                  {"material", number},
                                  {"mode", triangles}}}}});
  }

  std::string glb() {
    if (!binary_.empty()) json_["buffers"] = {{{"byteLength", counted(binary_.size())}}};
    // A name may hold bytes that are not UTF-8; a viewer then shows the sign for "unknown".
    std::string text = json_.dump(-1, ' ', false, Json::error_handler_t::replace);
    text.resize((text.size() + 3) / 4 * 4, ' ');
    const std::size_t binary_chunk = binary_.empty() ? 0 : 8 + binary_.size();
    std::string bytes = "glTF";
    append(bytes, std::uint32_t{2});
    append(bytes, counted(12 + 8 + text.size() + binary_chunk));
    add_chunk(bytes, "JSON", text);
    if (!binary_.empty()) add_chunk(bytes, std::string_view("BIN\0", 4), binary_);
    return bytes;
  }

 private:
  // glTF 2.0 specification (ISO/IEC 12113:2022), 5.1 accessor, 5.11 bufferView, 5.24 primitive
  static constexpr int float_component = 5126, uint_component = 5125;
  static constexpr int vertex_target = 34962, index_target = 34963;
  static constexpr int triangles = 4;

  /// IEC 61966-2-1, sRGB to linear light, which glTF's colour factors are in.
  static double linear(float shown) {
    const double value = std::clamp(static_cast<double>(shown), 0.0, 1.0);
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
  }

  static Json material_of(const ColouredPart& part) {
    const auto& [red, green, blue, alpha] = part.rgba;
    Json material = {
        {"name", part.name},
        {"pbrMetallicRoughness",
         {{"baseColorFactor",
           {to_five(linear(red)), to_five(linear(green)), to_five(linear(blue)), to_five(alpha)}},
          {"metallicFactor", 0.0},
          {"roughnessFactor", 0.8}}}};
    if (alpha < 1) material["alphaMode"] = "BLEND";
    return material;
  }

  /// Far finer than an eye or an 8-bit screen, and the same bytes whatever the library's pow().
  static double to_five(double share) {
    return std::round(std::clamp(share, 0.0, 1.0) * 1e5) / 1e5;
  }

  std::size_t add_positions(const TriangleMesh& mesh) {
    const std::size_t start = binary_.size();
    Floats low, high;
    low.fill(std::numeric_limits<float>::infinity());
    high.fill(-std::numeric_limits<float>::infinity());
    for (const auto& [x, y, z] : mesh.vertices_mm) {
      const Floats p = in_single({x / 1000, z / 1000, 0 - y / 1000});
      for (std::size_t i = 0; i < 3; ++i) {
        low[i] = std::min(low[i], p[i]);
        high[i] = std::max(high[i], p[i]);
        append(binary_, p[i]);
      }
    }
    return add_accessor({{"bufferView", add_view(start, vertex_target)},
                         {"componentType", float_component},
                         {"count", counted(mesh.vertices_mm.size())},
                         {"type", "VEC3"},
                         {"min", low},
                         {"max", high}});
  }

  std::size_t add_indices(const TriangleMesh& mesh) {
    const std::size_t start = binary_.size();
    for (const auto& corners : mesh.triangles)
      for (const std::uint32_t corner : corners) append(binary_, corner);
    return add_accessor({{"bufferView", add_view(start, index_target)},
                         {"componentType", uint_component},
                         {"count", counted(3 * mesh.triangles.size())},
                         {"type", "SCALAR"}});
  }

  std::size_t add_view(std::size_t start, int target) {
    json_["bufferViews"].push_back({{"buffer", 0},
                                    {"byteOffset", counted(start)},
                                    {"byteLength", counted(binary_.size() - start)},
                                    {"target", target}});
    return json_["bufferViews"].size() - 1;
  }

  std::size_t add_accessor(Json accessor) {
    json_["accessors"].push_back(std::move(accessor));
    return json_["accessors"].size() - 1;
  }

  static void add_chunk(std::string& bytes, std::string_view kind, const std::string& content) {
    append(bytes, counted(content.size()));
    bytes += kind;
    bytes += content;
  }

  Json json_ = {{"asset", {{"version", "2.0"}, {"generator", "brimwright"}}},
                {"scene", 0},
                {"scenes", Json::array({Json::object()})}};
  std::string binary_;
};

}  // namespace

std::string binary_stl_of(const TriangleMesh& mesh) {
  constexpr std::size_t header_size = 80, facet_size = 50;
  std::string bytes = "brimwright, millimetres, +z up";  // never "solid", which begins a text STL
  bytes.resize(header_size, ' ');
  bytes.reserve(header_size + 4 + facet_size * mesh.triangles.size());
  append(bytes, counted(mesh.triangles.size()));
  for (const auto& [ia, ib, ic] : mesh.triangles) {
    const Point &a = mesh.vertices_mm[ia], &b = mesh.vertices_mm[ib], &c = mesh.vertices_mm[ic];
    for (const Floats& place : {normal_of(a, b, c), in_single(a), in_single(b), in_single(c)})
      for (const float coordinate : place) append(bytes, coordinate);
    append(bytes, std::uint16_t{0});
  }
  return bytes;
}

std::string glb_of(const std::vector<ColouredPart>& parts) {
  Gltf gltf;
  for (const ColouredPart& part : parts)
    if (!part.mesh.triangles.empty()) gltf.add(part);
  return gltf.glb();
}

}  // namespace brimwright::geometry
