#include "planning/cavity.h"

#include "geometry/surface/enclosed_volume.h"
#include "moulds/mould_solid.h"
#include "planning/fill_level.h"

#include <algorithm>
#include <utility>

namespace brimwright::planning {
namespace {

using geometry::TriangleMesh;
using geometry::operator+;
using geometry::operator*;

constexpr int fine_facets = 360;

TriangleMesh standing_on_its_floor(TriangleMesh solid) {
  const double floor = geometry::bounding_box(solid).low_mm[2];
  for (auto& vertex : solid.vertices_mm) vertex[2] -= floor;
  return solid;
}

geometry::Vector middle_of(const TriangleMesh& solid) {
  const auto box = geometry::bounding_box(solid);
  const geometry::Vector middle = (box.low_mm + box.high_mm) * 0.5;
  return {middle[0], middle[1], 0};
}

bool is_any_tilted(const Run& run) {
  return std::any_of(run.pour.layers.begin(), run.pour.layers.end(), [](const Layer& layer) {
    return layer.tilted && layer.tilted->angle > Angle();
  });
}

}  // namespace

Cavity cavity_of(const Run& run) {
  const moulds::Mould& mould = run.pour.mould;
  Cavity cavity{.solid = standing_on_its_floor(moulds::solid_of(mould)),
                .line = depth_of(run.pour.line, mould, run.place("/pour/line")),
                .middle = {}};
  cavity.middle = middle_of(cavity.solid);
  if (is_any_tilted(run)) cavity.fine = moulds::solid_of(mould, fine_facets);
  return cavity;
}

}  // namespace brimwright::planning
