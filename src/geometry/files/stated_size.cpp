#include "geometry/files/stated_size.h"

#include "geometry/files/scene_text.h"
#include "geometry/files/text_meshes.h"
#include "units/user_error.h"

#include <cstdint>
#include <cstring>

namespace brimwright::geometry {
namespace {

[[noreturn]] void refuse(MeshFormat format, const std::string& file, const std::string& problem) {
  throw UserError(
      {.file = file,
       .field = "",
       .problem = problem.empty() ? "is not a sound " + name_of(format) + " file" : problem,
       .remedy = "copy or export it again"});
}

std::uint32_t number_at(std::string_view bytes, std::size_t at) {
  std::uint32_t number = 0;
  std::memcpy(&number, bytes.data() + at, sizeof number);
  return number;
}

/// The JSON of a GLB: magic, version and length, then the first chunk (glTF 2.0 specification,
/// section 4.4).
std::string_view scene_of_glb(std::string_view bytes, const std::string& file) {
  constexpr std::size_t head = 20;
  if (bytes.size() < head || !bytes.starts_with("glTF")) refuse(MeshFormat::glb, file, "");
  const std::uint32_t version = number_at(bytes, 4), length = number_at(bytes, 8);
  if (version != 2)
    refuse(MeshFormat::glb, file, "is of glTF version " + std::to_string(version) + ", not 2");
  if (length != bytes.size())
    refuse(MeshFormat::glb, file,
           "states " + std::to_string(length) + " bytes but has " + std::to_string(bytes.size()));
  const std::uint32_t chunk = number_at(bytes, 12);
  if (bytes.substr(16, 4) != "JSON" || chunk > bytes.size() - head)
    refuse(MeshFormat::glb, file, "");
  return bytes.substr(head, chunk);
}

}  // namespace

std::optional<std::size_t> stated_polygons(std::string_view bytes, MeshFormat format,
                                           const std::string& file) {
  switch (format) {
    case MeshFormat::ply:
      return polygons_of_ply(bytes, file);
    case MeshFormat::off:
      return polygons_of_off(bytes, file);
    case MeshFormat::glb:
      return triangles_of_scene(scene_of_glb(bytes, file), file);
    case MeshFormat::gltf:
      return triangles_of_scene(bytes, file);
    case MeshFormat::obj:
      if (bytes.find('\0') != std::string_view::npos) refuse(format, file, "");
      return polygons_of_obj(bytes, file);
    case MeshFormat::stl:
    case MeshFormat::three_mf:
      break;
  }
  return std::nullopt;
}

}  // namespace brimwright::geometry
