#include "geometry/repair/facet_pairs.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/intersections.h>
#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <numeric>
#include <set>
#include <utility>
#include <vector>

namespace brimwright::geometry {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Pairs = std::set<std::pair<std::uint32_t, std::uint32_t>>;

Kernel::Triangle_3 for_cgal(const TriangleMesh& mesh, std::size_t facet) {
  std::array<Kernel::Point_3, 3> corners;
  for (std::size_t i = 0; i < 3; ++i) {
    const auto& [x, y, z] = mesh.vertices_mm[mesh.triangles[facet][i]];
    corners[i] = {x, y, z};
  }
  return {corners[0], corners[1], corners[2]};
}

float rounded(double x, float towards) {
  const auto near = static_cast<float>(x);
  const bool is_inside = towards < 0 ? near > x : near < x;
  return is_inside ? std::nextafter(near, towards) : near;
}

/// Whether the boxes of two facets, rounded outward to single precision, meet or touch.
bool boxes_meet(const TriangleMesh& mesh, std::size_t first, std::size_t second) {
  constexpr float endless = std::numeric_limits<float>::infinity();
  for (std::size_t k = 0; k < 3; ++k) {
    const auto ends = [&](std::size_t facet) {
      std::array<double, 3> x;
      for (std::size_t i = 0; i < 3; ++i) x[i] = mesh.vertices_mm[mesh.triangles[facet][i]][k];
      const auto [low, high] = std::minmax_element(x.begin(), x.end());
      return std::pair{rounded(*low, -endless), rounded(*high, endless)};
    };
    const auto [low_a, high_a] = ends(first);
    const auto [low_b, high_b] = ends(second);
    if (low_a > high_b || low_b > high_a) return false;
  }
  return true;
}

bool share_a_spread_corner(const TriangleMesh& mesh, const std::vector<char>& is_spread,
                           std::size_t first, std::size_t second) {
  const auto& others = mesh.triangles[second];
  return std::any_of(
      mesh.triangles[first].begin(), mesh.triangles[first].end(), [&](std::uint32_t v) {
        return is_spread[v] != 0 && std::find(others.begin(), others.end(), v) != others.end();
      });
}

/// Triangles anywhere, on a grid or off it, near the origin or far from it, some with a corner in
/// common; those that are none for CGAL are left out.
TriangleMesh any_triangles() {
  TriangleMesh mesh;
  const auto corners = *rc::gen::inRange<std::uint32_t>(3, 120);
  const int room = *rc::gen::element(2, 6, 40);
  const double step = *rc::gen::element(1.0, 0.1, 1e-5, 1 / 3.0);
  const double away = *rc::gen::element(0.0, 1e3, -7e5);
  const auto place = [&] { return away + step * *rc::gen::inRange(-room, room + 1); };
  for (std::uint32_t i = 0; i < corners; ++i)
    mesh.vertices_mm.push_back({place(), place(), place()});
  const auto many = *rc::gen::inRange(1, 150);
  for (int i = 0; i < many; ++i) {
    const auto v = [&] { return *rc::gen::inRange<std::uint32_t>(0, corners); };
    mesh.triangles.push_back({v(), v(), v()});
    if (for_cgal(mesh, mesh.triangles.size() - 1).is_degenerate()) mesh.triangles.pop_back();
  }
  return mesh;
}

std::vector<std::uint32_t> all_facets(const TriangleMesh& mesh) {
  std::vector<std::uint32_t> facets(mesh.triangles.size());
  std::iota(facets.begin(), facets.end(), 0u);
  return facets;
}

}  // namespace

// The oracle is each pair asked one by one: boxes here, the triangles themselves by CGAL's exact
// do_intersect.
TEST_CASE("no pair of facets that meet is passed over, and none is seen twice", "[geometry][law]") {
  rc::prop("of triangles anywhere", [] {
    const TriangleMesh mesh = any_triangles();
    std::vector<char> is_spread(mesh.vertices_mm.size(), 0);
    if (*rc::gen::arbitrary<bool>())
      for (char& is : is_spread) is = *rc::gen::element<char>(0, 1);
    const FacetPairs pairs(mesh, all_facets(mesh), is_spread);
    Pairs seen;
    std::size_t counted = 0;
    for (std::size_t task = 0; task < pairs.tasks(); ++task)
      pairs.for_each_pair(
          task, [&](int many) { counted += static_cast<std::size_t>(many); },
          [&](std::uint32_t a, std::uint32_t b) {
            RC_ASSERT(a != b);
            RC_ASSERT(seen.emplace(std::minmax(a, b)).second);
          });
    std::size_t with_meeting_boxes = 0;
    for (std::uint32_t a = 0; a < mesh.triangles.size(); ++a)
      for (std::uint32_t b = a + 1; b < mesh.triangles.size(); ++b) {
        const bool is_near = boxes_meet(mesh, a, b);
        const bool is_sharing = share_a_spread_corner(mesh, is_spread, a, b);
        const bool is_seen = seen.contains({a, b});
        with_meeting_boxes += is_near ? 1 : 0;
        if (is_seen) RC_ASSERT(is_near && !is_sharing);
        if (!is_seen && !is_sharing)
          RC_ASSERT(!CGAL::do_intersect(for_cgal(mesh, a), for_cgal(mesh, b)));
      }
    RC_ASSERT(counted == with_meeting_boxes);
  });
}

}  // namespace brimwright::geometry
