#include "geometry/files/mesh_format.h"

#include "units/letters.h"
#include "units/user_error.h"

#include <array>
#include <cstddef>
#include <string_view>

namespace brimwright::geometry {
namespace {

struct Ending {
  std::string_view text;
  MeshFormat format;
  std::string_view name;
};

constexpr std::array<Ending, 7> endings = {{{".stl", MeshFormat::stl, "STL"},
                                            {".obj", MeshFormat::obj, "OBJ"},
                                            {".ply", MeshFormat::ply, "PLY"},
                                            {".off", MeshFormat::off, "OFF"},
                                            {".3mf", MeshFormat::three_mf, "3MF"},
                                            {".gltf", MeshFormat::gltf, "glTF"},
                                            {".glb", MeshFormat::glb, "GLB"}}};

}  // namespace

MeshFormat mesh_format(const std::string& path) {
  const std::string small = in_small_letters(path);
  for (const Ending& ending : endings)
    if (small.size() > ending.text.size() && small.ends_with(ending.text)) return ending.format;
  throw UserError({.file = path,
                   .field = "",
                   .problem = "is not a kind of mesh file known here",
                   .remedy = "give a .stl, .obj, .ply, .off, .3mf, .gltf or .glb file"});
}

std::string name_of(MeshFormat format) {
  return std::string(endings[static_cast<std::size_t>(format)].name);
}

}  // namespace brimwright::geometry
