// CGAL as a second opinion on tilted pours: clip the level solid by the slanting plane.

#include "cgal_booleans.h"
#include "geometry/levels/tilted_pour.h"
#include "geometry/surface/enclosed_volume.h"
#include "geometry/surface/weld.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;
using test::Kernel;

}  // namespace

TEST_CASE("CGAL, clipping a level cup by the slanting surface, finds the pour's volume",
          "[geometry][tilt][oracle]") {
  // Convex cups, whose low wall and brim are where their furthest corners lie.
  const TriangleMesh cup =
      GENERATE(test::turned({{15, 0}, {28, 22}, {34, 40}}, 12), test::obelisk(50, 40, 70, 46, 30));
  const double degrees = GENERATE(12.0, 38.0), side = GENERATE(0.0, 70.0, 200.0);
  const double c = std::cos(degrees * pi / 180), s = std::sin(degrees * pi / 180);
  const double x = std::cos(side * pi / 180), y = std::sin(side * pi / 180);
  const TiltedPour pour(cup, {Angle::in_degrees(degrees), Angle::in_degrees(side)});
  for (const double share : {0.3, 0.8, 1.0}) {
    const Length mark = share * pour.brim();
    CAPTURE(degrees, side, share);
    // The surface passes through the furthest point of the low wall at the mark's height, found
    // here by sliding along the cup's corner lines.
    double furthest = -1e9;
    for (const auto& [ia, ib, ic] : cup.triangles)
      for (const auto& [i, j] : {std::pair{ia, ib}, std::pair{ib, ic}, std::pair{ic, ia}}) {
        const auto &a = cup.vertices_mm[i], &b = cup.vertices_mm[j];
        const double z = mark / millimetre;
        if (!(a[2] < b[2]) || z < a[2] || z > b[2]) continue;
        const double t = (z - a[2]) / (b[2] - a[2]);
        furthest =
            std::max(furthest, x * (a[0] + t * (b[0] - a[0])) + y * (a[1] + t * (b[1] - a[1])));
      }
    const double offset = c * (mark / millimetre) - s * furthest;
    const double clipped =
        test::volume(test::clipped(cup, Kernel::Plane_3(-s * x, -s * y, c, -offset)));
    CHECK_THAT(pour.volume_at(mark) / cubic_millimetre, WithinRel(clipped, 1e-9));
    CHECK_THAT(enclosed_volume(pour.poured(mark)) / cubic_millimetre, WithinRel(clipped, 1e-9));
  }
}

}  // namespace brimwright::geometry
