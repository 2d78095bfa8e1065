#include "planning/remembered.h"

namespace brimwright::planning {

Argument& Argument::with(const geometry::TriangleMesh& mesh) {
  const auto& [vertices, triangles] = mesh;
  with(vertices.size());
  with_bytes(vertices.data(), vertices.size() * sizeof(vertices[0]));
  with(triangles.size());
  return with_bytes(triangles.data(), triangles.size() * sizeof(triangles[0]));
}

Argument& Argument::with_bytes(const void* first, std::size_t count) {
  bytes_.append(static_cast<const char*>(first), count);
  return *this;
}

}  // namespace brimwright::planning
