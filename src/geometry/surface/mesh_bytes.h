#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "sandbox/job_bytes.h"

#include <algorithm>

namespace brimwright::geometry {

template <class Bytes>
void pass(Bytes& bytes, sandbox::Like<TriangleMesh> auto& mesh) {
  bytes(mesh.vertices_mm, mesh.triangles);
}

/// Whether each facet's corners are vertices of the mesh, which bytes from elsewhere do not
/// promise.
inline bool has_its_corners(const TriangleMesh& mesh) {
  const std::size_t count = mesh.vertices_mm.size();
  return std::all_of(mesh.triangles.begin(), mesh.triangles.end(),
                     [&](const auto& t) { return t[0] < count && t[1] < count && t[2] < count; });
}

}  // namespace brimwright::geometry
