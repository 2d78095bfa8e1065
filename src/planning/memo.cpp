#include "planning/memo.h"

namespace brimwright::planning {

MemoKey& MemoKey::with(const geometry::TriangleMesh& mesh) {
  const auto& [vertices, triangles] = mesh;
  with(vertices.size());
  with_bytes(vertices.data(), vertices.size() * sizeof(vertices[0]));
  with(triangles.size());
  return with_bytes(triangles.data(), triangles.size() * sizeof(triangles[0]));
}

MemoKey& MemoKey::with_bytes(const void* first, std::size_t count) {
  bytes_.append(static_cast<const char*>(first), count);
  return *this;
}

}  // namespace brimwright::planning
