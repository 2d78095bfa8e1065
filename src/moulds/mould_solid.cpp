#include "moulds/mould_solid.h"

#include "geometry/surface/enclosed_volume.h"
#include "moulds/shape_solid.h"

#include <stdexcept>

namespace brimwright::moulds {

geometry::TriangleMesh solid_of(const Mould& mould, int round_facets) {
  if (!mould.mesh) {
    if (!mould.shape) throw std::logic_error("a mould has neither a mesh nor a shape");
    return solid_of(*mould.shape, round_facets);
  }
  geometry::TriangleMesh solid = *mould.mesh;
  for (auto& vertex : solid.vertices_mm) vertex[2] -= mould.floor / millimetre;
  return solid;
}

double holding_of(const Mould& mould, const geometry::TriangleMesh& solid) {
  return mould.curve.brimful() / geometry::enclosed_volume(solid);
}

}  // namespace brimwright::moulds
