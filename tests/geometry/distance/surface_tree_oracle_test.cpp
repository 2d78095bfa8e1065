// CGAL as a second opinion on distances, gaps and sides.

#include "any_placement.h"
#include "as_cgal.h"
#include "geometry/distance/surface_tree.h"
#include "geometry/surface/triangle_distance.h"
#include "random_bodies.h"
#include "solids.h"

#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace brimwright::geometry {
namespace {

using test::any_placement;
using test::any_point;
using test::between;
using Exact = CGAL::Exact_predicates_exact_constructions_kernel;
using Tree = CGAL::AABB_tree<
    CGAL::AABB_traits<test::Kernel, CGAL::AABB_face_graph_triangle_primitive<test::CgalMesh>>>;

using Corners = std::array<Vector, 3>;

template <class Kernel>
typename Kernel::Triangle_3 cgal_triangle(const Corners& t) {
  const auto point = [](const Vector& p) { return typename Kernel::Point_3(p[0], p[1], p[2]); };
  return {point(t[0]), point(t[1]), point(t[2])};
}

double exact_distance(const Corners& a, const Corners& b) {
  const auto squared = CGAL::squared_distance(cgal_triangle<Exact>(a), cgal_triangle<Exact>(b));
  return std::sqrt(CGAL::to_double(CGAL::exact(squared)));
}

bool is_degenerate(const Corners& t) { return length(doubled_area(t[0], t[1], t[2])) == 0; }

/// Close, in one plane, parallel, sharing corners or crossing, as whole numbers often are.
Corners any_triangle_of_whole_numbers() {
  Corners t;
  for (Vector& p : t) {
    for (double& x : p) x = *rc::gen::inRange(0, 5);
  }
  return t;
}

double our_distance(const Corners& a, const Corners& b) {
  NearestPair nearest;
  lower_to_distance(Facet(a[0], a[1], a[2]), Facet(b[0], b[1], b[2]), nearest);
  return nearest.distance_mm;
}

TEST_CASE("triangles are as far apart as CGAL's exact numbers say", "[surface_tree][oracle]") {
  rc::prop("corners on whole numbers", [] {
    for (int n = 0; n < 20; ++n) {
      const Corners a = any_triangle_of_whole_numbers(), b = any_triangle_of_whole_numbers();
      if (is_degenerate(a) || is_degenerate(b)) continue;  // of which CGAL makes nothing
      RC_ASSERT(std::abs(our_distance(a, b) - exact_distance(a, b)) < 1e-14);
    }
  });
  rc::prop("anywhere", [] {
    for (int n = 0; n < 20; ++n) {
      const Corners a = {any_point(5), any_point(5), any_point(5)};
      const Corners b = {any_point(5), any_point(5), any_point(5)};
      if (is_degenerate(a) || is_degenerate(b)) continue;
      RC_ASSERT(std::abs(our_distance(a, b) - exact_distance(a, b)) < 1e-12);
    }
  });
  rc::prop("needles, nearly parallel", [] {
    const auto hair = [] { return any_point(1e-4); };
    const Vector from = any_point(5), to = any_point(5), aside = any_point(2);
    const Corners a = {from, to, to + hair()};
    const Corners b = {from + aside + hair(), to + aside + hair(), from + aside + hair()};
    RC_PRE(!is_degenerate(a) && !is_degenerate(b));
    RC_ASSERT(std::abs(our_distance(a, b) - exact_distance(a, b)) < 1e-9);
  });
}

TriangleMesh any_cells() {
  std::vector<test::Cut> cuts = {{true, {1, 1, 1}, {4, 4, 4}}};
  for (int n = *rc::gen::inRange(0, 8); n-- > 0;) {
    test::Cut cut{.adds = *rc::gen::arbitrary<bool>(), .low = {}, .high = {}};
    for (std::size_t i = 0; i < 3; ++i) {
      cut.low[i] = *rc::gen::inRange(0, 5);
      cut.high[i] = cut.low[i] + 1 + *rc::gen::inRange(0, 5 - cut.low[i]);
    }
    cuts.push_back(cut);
  }
  cuts.push_back({true, {2, 2, 2}, {3, 3, 3}});  // never nothing
  return test::CellBody({5, 5, 5}, cuts).mesh();
}

TriangleMesh any_terrain() {
  test::Terrain terrain{.columns = 6, .rows = 5, .top = {}, .bottom = {}};
  for (int i = 0; i < 30; ++i) {
    terrain.top.push_back(between(1, 4));
    terrain.bottom.push_back(between(-2, 0.5));
  }
  return terrain.mesh();
}

TriangleMesh any_body() { return *rc::gen::arbitrary<bool>() ? any_cells() : any_terrain(); }

std::vector<test::Kernel::Triangle_3> triangles_of(const TriangleMesh& mesh) {
  std::vector<test::Kernel::Triangle_3> all;
  const auto& v = mesh.vertices_mm;
  for (const auto& [a, b, c] : mesh.triangles)
    all.push_back(cgal_triangle<test::Kernel>({v[a], v[b], v[c]}));
  return all;
}

/// Each facet against each: CGAL's distances, and its own exact word on whether they cross.
double gap_by_brute_force(const TriangleMesh& a, const TriangleMesh& b) {
  const auto firsts = triangles_of(a), seconds = triangles_of(b);
  double squared = std::numeric_limits<double>::infinity();
  for (const auto& first : firsts) {
    for (const auto& second : seconds) {
      if (CGAL::do_intersect(first, second)) return 0;
      squared = std::min(squared, CGAL::squared_distance(first, second));
    }
  }
  return std::sqrt(squared);
}

TEST_CASE("the gap is the least that CGAL finds for each facet against each",
          "[surface_tree][oracle]") {
  rc::prop("random bodies", [] {
    const TriangleMesh first = any_body();
    const TriangleMesh second = placed(any_body(), any_placement(9));
    const Gap gap = gap_between(SurfaceTree(first), {}, SurfaceTree(second), {});
    RC_ASSERT(std::abs(gap.width / millimetre - gap_by_brute_force(first, second)) < 1e-9);
  });
}

TEST_CASE("signed distances are CGAL's, on CGAL's side", "[surface_tree][oracle]") {
  rc::prop("random bodies and points", [] {
    const TriangleMesh body = placed(any_body(), any_placement(5));
    const SurfaceTree ours(body);
    const test::CgalMesh mesh = test::as_cgal(body);
    const Tree tree(mesh.faces().begin(), mesh.faces().end(), mesh);
    const CGAL::Side_of_triangle_mesh<test::CgalMesh, test::Kernel> side(tree);
    for (int n = 0; n < 30; ++n) {
      const Vector at = any_point(8);
      const test::Kernel::Point_3 point(at[0], at[1], at[2]);
      RC_ASSERT(ours.contains(at) == (side(point) == CGAL::ON_BOUNDED_SIDE));
      const double distance = std::sqrt(tree.squared_distance(point));
      RC_ASSERT(std::abs(std::abs(ours.signed_distance_mm(at)) - distance) < 1e-9);
      RC_ASSERT((ours.signed_distance_mm(at) < 0) == ours.contains(at));
    }
  });
}

}  // namespace
}  // namespace brimwright::geometry
