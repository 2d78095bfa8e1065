#pragma once

#include "geometry/mesh_format.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// How many polygons the head of a file promises; nothing where its format does not say.
///
/// Checks on the way that the file is what its ending says and long enough for what it promises:
/// PLY and OFF by their counts, GLB by its length, glTF and OBJ by how they begin. UserError naming
/// `file` otherwise. For STL and 3MF see stl_file.h and package_unit.h.
std::optional<std::size_t> stated_polygons(std::string_view bytes, MeshFormat format,
                                           const std::string& file);

}  // namespace brimwright::geometry
