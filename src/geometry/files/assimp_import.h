#pragma once

#include "geometry/files/mesh_format.h"
#include "geometry/surface/triangle_mesh.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace brimwright::geometry {

/// What Assimp made of a file, in the file's own numbers and axes.
struct ImportedMesh {
  TriangleMesh mesh;         // corners not shared; indices checked, coordinates not
  std::size_t polygons = 0;  // of three corners or more, before they were cut into triangles
  std::size_t objects = 0;   // placed in the scene; all are in `mesh`, moved to their places
  bool unfiltered = false;   // read on a system that has no filter to confine the reader by
};

/// Reads `bytes` by Assimp's importer for `format` alone, in a child process of limited memory (2
/// GiB) and time (5 s, and more for files above 10 MB) that can open no file (see child_process.h).
/// UserError naming `file` when the importer refuses them, breaks down, or takes too much.
ImportedMesh import_by_assimp(std::string_view bytes, MeshFormat format, const std::string& file);

}  // namespace brimwright::geometry
