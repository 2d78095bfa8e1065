#include "geometry/repair/mesh_inspection.h"
#include "mesh_damage.h"
#include "solids.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using test::box;
using test::inside_out;
using test::moved;
using test::together;

/// 120 facets on 62 vertices.
TriangleMesh cup() { return test::turned({{25, 0}, {35, 40}}, 30); }

TEST_CASE("a sound solid has no defects", "[geometry][inspection]") {
  const TriangleMesh hollow =
      together(box({0, 0, 0}, {30, 30, 30}), inside_out(box({10, 10, 10}, {15, 15, 15})));
  const auto [mesh, shells] = GENERATE_COPY(
      table<TriangleMesh, std::size_t>({{cup(), 1},
                                        {test::without_sharing(cup()), 1},
                                        {hollow, 2},
                                        {together(cup(), moved(cup(), {90, 0, 0})), 2}}));
  const Inspection found = inspected(mesh, InspectFor::defects_and_crossings);
  CHECK(found.closed);
  CHECK(found.facing_consistently);
  CHECK(found.facets == mesh.triangles.size());
  CHECK(found.shells == shells);
  CHECK(found.open_edges == 0);
  CHECK(found.rims == 0);
  CHECK(found.defects.empty());
}

struct Case {
  std::string name;
  TriangleMesh mesh;
  std::vector<std::pair<Flaw, std::size_t>> defects;
};

std::vector<Case> broken() {
  using namespace test;
  const TriangleMesh good = cup();
  const TriangleMesh cube = box({0, 0, 0}, {10, 10, 10}), inner = box({3, 3, 3}, {6, 6, 6});
  TriangleMesh pulled = refined(cube);
  for (auto& p : pulled.vertices_mm) {
    if (p == Point{5, 5, 10}) p = {5, 5, -3};
  }
  return {
      // a slit makes an edge of three: the long one, and two short ones
      {"slit", with_slit(good, 7), {{Flaw::slits, 1}, {Flaw::open_edges, 3}}},
      {"missing facet", without_facets(good, {7}), {{Flaw::open_edges, 3}}},
      {"two missing", without_facets(good, {7, 50}), {{Flaw::open_edges, 6}}},
      {"jitter", jittered(good, 1e-5), {{Flaw::unshared_corners, 360}, {Flaw::open_edges, 360}}},
      {"twice", with_facet_again(good, 7), {{Flaw::duplicate_facets, 1}, {Flaw::crowded_edges, 3}}},
      {"no area", with_collapsed_facet(good, 7), {{Flaw::collapsed_facets, 1}}},
      {"turned", with_facets_turned(good, {7, 50}), {{Flaw::turned_facets, 2}}},
      {"inside out", inside_out(good), {{Flaw::inside_out, 1}}},
      {"one of two inside out",
       together(good, inside_out(moved(good, {90, 0, 0}))),
       {{Flaw::inside_out, 1}}},
      {"part inside", together(cube, inner), {{Flaw::nested_parts, 1}}},
      {"overlap", together(cube, moved(cube, {5, 1, 1})), {{Flaw::overlapping_parts, 1}}},
      {"shared edge", together(cube, moved(cube, {10, 10, 0})), {{Flaw::crowded_edges, 1}}},
  };
}

TEST_CASE("each defect is counted as it was made", "[geometry][inspection]") {
  for (const Case& row : broken()) {
    INFO(row.name);
    const Inspection found = inspected(row.mesh);
    std::vector<std::pair<Flaw, std::size_t>> defects;
    for (const Defect& defect : found.defects) {
      defects.emplace_back(defect.kind, defect.count);
      CHECK(defect.what.starts_with(std::to_string(defect.count) + " "));
    }
    CHECK(defects == row.defects);
  }
}

TEST_CASE("a surface through itself is found when asked for", "[geometry][inspection]") {
  TriangleMesh pulled = test::refined(box({0, 0, 0}, {10, 10, 10}));
  for (auto& p : pulled.vertices_mm) {
    if (p == test::Point{5, 5, 10}) p = {4, 6, -3};
  }
  CHECK(inspected(pulled).defects.empty());
  const Inspection found = inspected(pulled, InspectFor::defects_and_crossings);
  REQUIRE(found.defects.size() == 1);
  CHECK(found.defects[0].kind == Flaw::crossing);
}

TEST_CASE("closed and facing are told of the file as it is, not as it can be mended",
          "[geometry][inspection]") {
  CHECK_FALSE(inspected(test::with_slit(cup(), 7)).closed);
  CHECK_FALSE(inspected(test::without_facets(cup(), {7})).closed);
  CHECK_FALSE(inspected(test::jittered(cup(), 1e-5)).closed);
  const Inspection turned = inspected(test::with_facets_turned(cup(), {7}));
  CHECK(turned.closed);
  CHECK_FALSE(turned.facing_consistently);
}

TEST_CASE("a defect's place is where it was made", "[geometry][inspection]") {
  // Facet 0 of the box is half its floor with corners (0, 0), (10, 10), (10, 0).
  const TriangleMesh mesh = test::without_facets(box({0, 0, 0}, {10, 10, 10}), {1});
  const Inspection found = inspected(mesh);
  REQUIRE(found.defects.size() == 1);
  CHECK(found.defects[0].what == "3 edges have a facet on one side only");
  CHECK(found.defects[0].first_mm == test::Point{5, 5, 0});
}

TEST_CASE("a skin's rim is measured", "[geometry][inspection]") {
  TriangleMesh skin = cup();
  std::erase_if(skin.triangles, [&](const auto& t) {
    return std::all_of(t.begin(), t.end(),
                       [&](std::uint32_t v) { return skin.vertices_mm[v][2] == 40; });
  });
  const Inspection found = inspected(test::without_sharing(skin));
  CHECK_FALSE(found.closed);
  CHECK(found.open_edges == 30);
  CHECK(found.rims == 1);
  REQUIRE(found.widest_rim);
  // A regular 30-gon of radius 35 in the plane z = 40; a lid on it would face up.
  const double area = test::polygon_share(30) * 3.14159265358979323846 * 35 * 35;
  CHECK_THAT(found.widest_rim->vector_area_mm2[2], WithinAbs(area, 1e-9));
  CHECK_THAT(found.widest_rim->middle_mm[2], WithinAbs(40, 1e-12));
}

}  // namespace
}  // namespace brimwright::geometry
