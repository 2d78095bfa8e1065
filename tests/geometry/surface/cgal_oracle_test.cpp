// CGAL as a second opinion: clip a mesh at a plane and measure what is below, the slow way.

#include "cgal_booleans.h"
#include "geometry/levels/level_curve.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;

double clipped_volume(const TriangleMesh& mesh, double z) {
  return test::volume(test::clipped(mesh, test::Kernel::Plane_3(0, 0, 1, -z)));
}

TEST_CASE("CGAL, clipping at the level, finds the same volume", "[geometry][oracle]") {
  const TriangleMesh solid = GENERATE(
      test::moved(test::obelisk(80, 60, 60, 30, 40), {10, 20, 30}), test::torus(30, 10, 9, 14),
      test::turned({{0, 0}, {22, 3}, {18, 9}, {30, 21}, {0, 27}}, 11),
      test::on_its_side(test::turned({{20, 0}, {31, 15}, {20, 50}}, 7)),
      test::turned_about_z(test::stretched(test::ball(1, 9, 8), {40, 25, 15}), 0.4));
  const LevelCurve curve = LevelCurve::of_solid(solid);
  CHECK_THAT(test::volume(test::as_cgal(solid)),
             WithinRel(curve.brimful() / cubic_millimetre, 1e-12));
  const Box box = bounding_box(solid);
  for (const double share : {0.07, 0.31, 0.5001, 0.73, 0.96}) {
    const double depth = share * (box.high_mm[2] - box.low_mm[2]);
    // The clipped corners are rounded to double precision.
    CHECK_THAT(clipped_volume(solid, box.low_mm[2] + depth),
               WithinRel(curve.volume_below(depth * millimetre) / cubic_millimetre, 1e-10));
  }
}

}  // namespace
}  // namespace brimwright::geometry
