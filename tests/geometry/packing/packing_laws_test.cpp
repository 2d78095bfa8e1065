#include "as_cgal.h"
#include "geometry/packing/packing.h"
#include "solids.h"

#include <CGAL/AABB_face_graph_triangle_primitive.h>
#include <CGAL/AABB_traits.h>
#include <CGAL/AABB_tree.h>
#include <CGAL/Side_of_triangle_mesh.h>
#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace brimwright::geometry {
namespace {

using Tree = CGAL::AABB_tree<
    CGAL::AABB_traits<test::Kernel, CGAL::AABB_face_graph_triangle_primitive<test::CgalMesh>>>;
using Side = CGAL::Side_of_triangle_mesh<test::CgalMesh, test::Kernel>;

/// A solid for CGAL to judge by.
struct Judged {
  explicit Judged(const TriangleMesh& solid)
      : mesh(test::as_cgal(solid)), tree(mesh.faces().begin(), mesh.faces().end(), mesh) {}

  /// From the other's vertices to this surface: the gap is no more than that.
  double to_vertices_of(const Judged& other) const {
    double least = std::numeric_limits<double>::infinity();
    for (const auto vertex : other.mesh.vertices()) {
      least = std::min(least, std::sqrt(tree.squared_distance(other.mesh.point(vertex))));
    }
    return least;
  }
  bool crosses(const Judged& other) const {
    for (const auto face : other.mesh.faces()) {
      std::vector<test::Kernel::Point_3> corners;
      for (const auto vertex : vertices_around_face(other.mesh.halfedge(face), other.mesh)) {
        corners.push_back(other.mesh.point(vertex));
      }
      if (tree.do_intersect(test::Kernel::Triangle_3(corners[0], corners[1], corners[2])))
        return true;
    }
    return false;
  }
  bool holds_all_of(const Judged& other) const { return count_within(other) == other.size(); }
  bool holds_none_of(const Judged& other) const { return count_within(other) == 0; }

  std::size_t size() const { return mesh.number_of_vertices(); }
  std::size_t count_within(const Judged& other) const {
    const Side side(tree);
    std::size_t within = 0;
    for (const auto vertex : other.mesh.vertices()) {
      if (side(other.mesh.point(vertex)) == CGAL::ON_BOUNDED_SIDE) ++within;
    }
    return within;
  }

  test::CgalMesh mesh;
  Tree tree;
};

double between(double low, double high) {
  constexpr int steps = 1000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

TriangleMesh any_hollow() {
  if (*rc::gen::arbitrary<bool>()) {
    return test::box({0, 0, 0}, {between(20, 60), between(20, 60), between(20, 60)});
  }
  return test::turned({{between(8, 30), 0}, {between(15, 30), between(15, 40)}}, 12);
}

TriangleMesh any_body() {
  switch (*rc::gen::inRange(0, 4)) {
    case 0:
      return test::box({0, 0, 0}, {between(8, 40), between(8, 30), between(8, 30)});
    case 1:
      return test::turned({{between(3, 12), -5}, {between(3, 12), between(5, 40)}}, 7);
    case 2:
      return test::torus(between(8, 16), between(1, 6), 4, 9);  // with a hole to lie in
    default:
      return test::obelisk(between(8, 30), between(8, 30), 1, between(2, 9), between(5, 30));
  }
}

PackingTask any_task() {
  const Length cover = *rc::gen::arbitrary<bool>() ? between(0, 5) * millimetre : Length{};
  const Length apart = *rc::gen::arbitrary<bool>() ? between(0, 5) * millimetre : Length{};
  return {.hollow = any_hollow(),
          .body = any_body(),
          .cover = cover,
          .apart = apart,
          .lying = *rc::gen::element(Lying::level, Lying::layered, Lying::free),
          .most = 3};
}

}  // namespace

TEST_CASE("bodies found to fit lie in the hollow with their cover and apart from each other",
          "[geometry][packing][law]") {
  rc::prop("CGAL agrees", [] {
    const PackingTask task = any_task();
    const Packing found = packed(task);
    RC_TAG(found.places.size());
    const double rounding_mm = 1e-5;
    const Judged hollow(task.hollow);
    std::vector<Judged> bodies;
    bodies.reserve(found.places.size());
    for (const Placement& place : found.places) bodies.emplace_back(placed(task.body, place));
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      RC_ASSERT(hollow.holds_all_of(bodies[i]));
      RC_ASSERT(!hollow.crosses(bodies[i]));
      const double cover = hollow.to_vertices_of(bodies[i]);
      RC_ASSERT(cover >= task.cover / millimetre - rounding_mm);
      RC_ASSERT(cover >= found.least_cover / millimetre - rounding_mm);
      for (std::size_t j = 0; j < i; ++j) {
        RC_ASSERT(!bodies[i].crosses(bodies[j]));
        RC_ASSERT(bodies[i].holds_none_of(bodies[j]) && bodies[j].holds_none_of(bodies[i]));
        const double apart =
            std::min(bodies[i].to_vertices_of(bodies[j]), bodies[j].to_vertices_of(bodies[i]));
        RC_ASSERT(apart >= task.apart / millimetre - rounding_mm);
        RC_ASSERT(apart >= found.least_apart / millimetre - rounding_mm);
      }
    }
    RC_ASSERT(found.places.size() <= task.most);
  });
}

}  // namespace brimwright::geometry
