#include "service/cut_open.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace brimwright::service {

using geometry::Plane;
using geometry::TriangleMesh;

Plane knife_through(const std::vector<const TriangleMesh*>& solids) {
  double near = std::numeric_limits<double>::infinity(), far = -near;
  for (const TriangleMesh* solid : solids)
    for (const auto& vertex : solid->vertices_mm) {
      near = std::min(near, vertex[1]);
      far = std::max(far, vertex[1]);
    }
  return {{0, 1, 0}, near <= far ? (near + far) / 2 : 0};
}

TriangleMesh rear_of_wall(const TriangleMesh& wall, const Plane& knife) {
  auto cut = geometry::plane_cut(wall, knife.flipped());
  return {std::move(cut.vertices_mm), std::move(cut.below)};
}

}  // namespace brimwright::service
