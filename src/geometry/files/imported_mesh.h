#pragma once

#include "geometry/surface/mesh_bytes.h"

#include <cstdint>

namespace brimwright::geometry {

/// What an importer made of a file, in the file's own numbers and axes.
struct ImportedMesh {
  TriangleMesh mesh;           // corners not shared; indices checked, coordinates not
  std::uint64_t polygons = 0;  // of three corners or more, before they were cut into triangles
  std::uint64_t objects = 0;   // placed in the scene; all are in `mesh`, moved to their places
  bool unfiltered = false;     // read on a system that has no filter to confine the reader by
};

/// As the importing helper sends it.
template <class Bytes>
void pass(Bytes& bytes, sandbox::Like<ImportedMesh> auto& imported) {
  bytes(imported.polygons, imported.objects, imported.mesh);
}

}  // namespace brimwright::geometry
