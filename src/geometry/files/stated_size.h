#pragma once

#include "geometry/files/mesh_format.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// How many polygons a file has by its own statements; nothing where its format does not say.
///
/// Checks on the way that the file is what its ending says, holds all that it promises and nothing
/// that Assimp would misread (see text_meshes.h, scene_text.h). UserError naming `file` otherwise.
/// For STL see stl_file.h and text_meshes.h, for 3MF package_unit.h.
std::optional<std::size_t> stated_polygons(std::string_view bytes, MeshFormat format,
                                           const std::string& file);

}  // namespace brimwright::geometry
