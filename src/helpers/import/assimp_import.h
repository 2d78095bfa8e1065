#pragma once

#include "geometry/files/imported_mesh.h"
#include "geometry/files/mesh_format.h"

#include <optional>
#include <string_view>

namespace brimwright::helpers {

/// Reads `bytes` by Assimp's importer for `format` alone, with no other file in its world. Nothing
/// if the importer refuses them.
std::optional<geometry::ImportedMesh> import_by_assimp(std::string_view bytes,
                                                       geometry::MeshFormat format);

}  // namespace brimwright::helpers
