// CGAL as a second opinion on what shows: the surface of the union of all parts.

#include "cgal_booleans.h"
#include "geometry/beads/bead.h"
#include "geometry/exposure/exposed_surface.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numeric>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinRel;

struct Shown {
  double area = 0, upward = 0;
};

/// Of the union of all parts, in square millimetres.
Shown shown_by_union(const std::vector<TriangleMesh>& parts) {
  const test::CgalMesh all = test::united(parts);
  Shown shown;
  for (const auto face : all.faces()) {
    const double area = test::area(all, face);
    shown.area += area;
    const auto corner = all.halfedge(face);
    const auto& a = all.point(all.source(corner));
    const auto& b = all.point(all.target(corner));
    const auto& c = all.point(all.target(all.next(corner)));
    if (CGAL::cross_product(b - a, c - a).z() > 1e-9 * area) shown.upward += area;
  }
  return shown;
}

Shown shown_by_winding(const std::vector<TriangleMesh>& parts, double facet_mm) {
  const auto seen = exposed_surface(parts, -1e6, facet_mm);
  const auto sum = [](const std::vector<Area>& areas) {
    return std::accumulate(areas.begin(), areas.end(), Area()) / square_millimetre;
  };
  return {.area = sum(seen.area), .upward = sum(seen.upward)};
}

/// A piped top: dollop, ring, loose spiral, tail, shells and dots run into each other; and a ball
/// set in. `n` shifts it all, so that no two look alike.
std::vector<TriangleMesh> topping(int n) {
  const auto mm = [](double x) { return x * millimetre; };
  const double s = 0.37 * n;
  const Opening opening =
      n % 2 == 0 ? Opening(StarOpening{5 + n, mm(4), mm(2.7)}) : Opening(RoundOpening{mm(3.5)});
  auto parts =
      swept({Dollop{mm(24 + s), mm(11)}, Ring{mm(15 + s)},
             ConicalSpiral{2.2, mm(26), mm(8 + s / 2), mm(17)}, Tail{mm(9.3)},
             Shells{3, mm(12), mm(11), mm(1.7 + s)}, Dots{2, mm(16.1 + s), mm(7.3), mm(1.1)}},
            opening, 1.1);
  parts.push_back(test::moved(test::ball(7, 20, 30), {5.3, 2.1 + s, 8.9}));
  return parts;
}

TEST_CASE("CGAL, uniting the beads of a topping, finds the same surface in the open",
          "[geometry][exposed][oracle]") {
  const auto parts = topping(GENERATE(0, 1, 2, 3));
  const Shown truth = shown_by_union(parts);
  const Shown coarse = shown_by_winding(parts, 1), fine = shown_by_winding(parts, 0.25);
  CHECK_THAT(coarse.area, WithinRel(truth.area, 0.01));
  CHECK_THAT(coarse.upward, WithinRel(truth.upward, 0.01));
  CHECK_THAT(fine.area, WithinRel(truth.area, 0.002));
  CHECK_THAT(fine.upward, WithinRel(truth.upward, 0.002));
}

}  // namespace
}  // namespace brimwright::geometry
