#pragma once

#include "geometry/files/imported_mesh.h"
#include "geometry/files/mesh_format.h"

#include <string>
#include <string_view>

namespace brimwright::geometry {

/// Reads `bytes` by the importing helper program (see helpers/import) with limited memory (2 GiB)
/// and time (5 s, and more for files above 10 MB). UserError naming `file` when the importer
/// refuses them, breaks down or takes too much, and when it is not installed.
ImportedMesh import_mesh(std::string_view bytes, MeshFormat format, const std::string& file);

}  // namespace brimwright::geometry
