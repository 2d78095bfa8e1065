#include "geometry/repair/mend_shells.h"
#include "geometry/repair/mesh_checks.h"
#include "geometry/repair/mesh_mending.h"
#include "geometry/surface/enclosed_volume.h"
#include "measured.h"
#include "mesh_damage.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::box;
using test::inside_out;
using test::mm3;
using test::moved;
using test::together;

/// A fluted-cup-like cavity with lids, 60 sides: 1200 facets after refining.
TriangleMesh cup() { return test::refined(test::turned({{25, 0}, {32, 18}, {35, 40}}, 60)); }

/// What the cup holds, by its formula and not its mesh: frusta of regular 60-gons, each with
/// h / 3 (A + sqrt(A B) + B).
double cup_mm3() {
  const double share = test::polygon_share(60) * 3.14159265358979323846;
  const auto frustum = [&](double r, double s, double h) {
    return share * h / 3 * (r * r + r * s + s * s);
  };
  return frustum(25, 32, 18) + frustum(32, 35, 22);
}

double bound_mm3(const Mended& mended) {
  double sum = 0;
  for (const Mend& mend : mended.mends) sum += mend.bound / cubic_millimetre;
  return sum;
}

struct Case {
  std::string name;
  TriangleMesh mesh;
  std::vector<Flaw> flaws;  // mended, in this order
  std::vector<std::size_t> counts;
};

std::vector<Case> broken_cups() {
  using namespace test;
  const TriangleMesh good = cup();
  const double diagonal = std::hypot(70, 70, 40);
  std::vector<std::size_t> some, all(good.triangles.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
  for (std::size_t i = 3; i < all.size(); i += 7) some.push_back(i);
  const std::size_t corners = 3 * good.triangles.size();
  return {
      {"corners not shared", without_sharing(good), {}, {}},
      {"corners jittered by less than a millionth of the size",
       jittered(good, 2e-7 * diagonal),
       {Flaw::unshared_corners},
       {corners}},
      {"corners jittered by some millionths of the size",
       jittered(good, 2e-6 * diagonal),
       {Flaw::unshared_corners},
       {corners}},
      {"a slit", with_slit(good, 100), {Flaw::slits}, {1}},
      {"a slit that gapes by a micrometre",
       with_slit(good, 100, {3e-4, 2e-4, 1e-4}),
       {Flaw::slits},
       {1}},
      {"slits in files without shared corners",
       without_sharing(with_slit(with_slit(good, 100), 500)),
       {Flaw::slits},
       {2}},
      {"a missing facet", without_facets(good, {200}), {Flaw::holes}, {1}},
      {"missing facets here and there",
       without_facets(good, {200, 400, 700, 1000}),
       {Flaw::holes},
       {4}},
      {"two missing facets side by side", without_facets(good, {201, 203}), {Flaw::holes}, {1}},
      {"a facet twice", with_facet_again(good, 77), {Flaw::duplicate_facets}, {1}},
      {"a facet three times",
       with_facet_again(with_facet_again(good, 77), 77),
       {Flaw::duplicate_facets},
       {2}},
      {"all facets twice", together(good, good), {Flaw::duplicate_facets}, {good.triangles.size()}},
      {"a pair of facets back to back too many",
       with_facet_again(with_back_of_facet(good, 77), 77),
       {Flaw::duplicate_facets},
       {2}},
      {"fronts and backs of all facets",
       two_sided(good),
       {Flaw::duplicate_facets},
       {good.triangles.size()}},
      {"a facet without area", with_collapsed_facet(good, 12), {Flaw::collapsed_facets}, {1}},
      {"all facets turned", inside_out(good), {Flaw::inside_out}, {1}},
      {"one facet turned", with_facets_turned(good, {9}), {Flaw::turned_facets}, {1}},
      {"a seventh of the facets turned",
       with_facets_turned(good, some),
       {Flaw::turned_facets},
       {some.size()}},
      {"most facets turned",
       inside_out(with_facets_turned(good, some)),
       {Flaw::turned_facets, Flaw::inside_out},
       {some.size(), 1}},
      {"a loose scrap",
       together(good, TriangleMesh{{{0, 0, 90}, {1, 0, 90}, {0, 1, 91}}, {{0, 1, 2}}}),
       {Flaw::scraps},
       {1}},
      {"much at once",
       jittered(without_facets(with_slit(with_facets_turned(good, {9, 10, 50}), 300), {700}),
                2e-7 * diagonal),
       {Flaw::unshared_corners, Flaw::slits, Flaw::turned_facets, Flaw::holes},
       {corners + 3 - 3, 1, 3, 1}},
  };
}

TEST_CASE("a cup broken in one way or another holds as much as before once mended",
          "[geometry][mending]") {
  for (const Case& row : broken_cups()) {
    INFO(row.name);
    const Mended done = mended(row.mesh, "cup.stl", MendAim::closed_solid);
    std::vector<Flaw> flaws;
    std::vector<std::size_t> counts;
    for (const Mend& mend : done.mends) {
      flaws.push_back(mend.flaw);
      counts.push_back(mend.count);
      INFO(mend.what);
      CHECK_FALSE(mend.what.empty());
    }
    CHECK(flaws == row.flaws);
    CHECK(counts == row.counts);
    const CheckedSolid checked = checked_solid(done.mesh, "cup.stl");
    CHECK(checked.remarks.empty());
    CHECK_THAT(mm3(checked.solid), WithinAbs(cup_mm3(), bound_mm3(done) + 1e-11 * cup_mm3()));
    CHECK(bound_mm3(done) < 0.003 * cup_mm3());
  }
}

TEST_CASE("a mend says where", "[geometry][mending]") {
  const TriangleMesh good = cup();
  const auto [a, b, c] = good.triangles[200];
  const Mended done = mended(test::without_facets(good, {200}), "cup.stl", MendAim::closed_solid);
  REQUIRE(done.mends.size() == 1);
  for (std::size_t i = 0; i < 3; ++i) {
    const double middle =
        (good.vertices_mm[a][i] + good.vertices_mm[b][i] + good.vertices_mm[c][i]) / 3;
    CHECK_THAT(done.mends[0].first_mm[i], WithinAbs(middle, 1e-9));
  }
  const std::vector<Remark> remarks = remarks_of(done, "cup.stl");
  REQUIRE(remarks.size() == 1);
  CHECK_THAT(remarks[0].text, Contains("cup.stl: 1 hole filled") && Contains("the first at ("));
  CHECK(remarks[0].severity == Severity::note);
}

TEST_CASE("one facet missing from a flat wall is put back, however large", "[geometry][mending]") {
  // Half a face of a cube: a twelfth of its surface, but flat with the other half.
  const TriangleMesh cube = box({0, 0, 0}, {10, 10, 10});
  for (std::size_t facet = 0; facet < 12; ++facet) {
    const Mended done =
        mended(test::without_facets(cube, {facet}), "cube.stl", MendAim::closed_solid);
    REQUIRE(done.mends.size() == 1);
    CHECK(done.mends[0].flaw == Flaw::holes);
    CHECK(done.mends[0].bound == Volume());
    CHECK_THAT(mm3(done.mesh), WithinRel(1000.0, 1e-12));
  }
}

TEST_CASE("caps of no area that modellers leave in slits go, and the slits are closed",
          "[geometry][mending]") {
  // Vertex 8 halves an edge of the cube. The facets on both sides are cut there, and a cap of no
  // area lies between: three facets at each half of the edge.
  TriangleMesh cube = box({0, 0, 0}, {10, 10, 10});
  cube.vertices_mm.push_back({5, 0, 0});
  std::vector<std::array<std::uint32_t, 3>> cut;
  for (const auto& corners : cube.triangles) {
    bool is_cut = false;
    for (std::size_t i = 0; i < 3; ++i) {
      const std::uint32_t a = corners[i], b = corners[(i + 1) % 3], c = corners[(i + 2) % 3];
      if ((a == 0 && b == 1) || (a == 1 && b == 0)) {
        cut.push_back({a, 8, c});
        cut.push_back({8, b, c});
        is_cut = true;
      }
    }
    if (!is_cut) cut.push_back(corners);
  }
  cube.triangles = cut;
  cube.triangles.push_back({0, 1, 8});
  const Mended done = mended(cube, "cube.stl", MendAim::closed_solid);
  REQUIRE(done.mends.size() == 1);
  CHECK(done.mends[0].flaw == Flaw::collapsed_facets);
  CHECK_THAT(mm3(checked_solid(done.mesh, "cube.stl").solid), WithinRel(1000.0, 1e-12));
}

TEST_CASE("sound meshes come back as they were", "[geometry][mending]") {
  const TriangleMesh hollow =
      together(box({0, 0, 0}, {30, 30, 30}), inside_out(box({10, 10, 10}, {15, 15, 15})));
  const TriangleMesh mesh = GENERATE_COPY(
      cup(), test::torus(20, 7, 12, 30), hollow, together(hollow, box({11, 11, 11}, {14, 14, 14})),
      together(box({0, 0, 0}, {1, 1, 1}), box({5, 0, 0}, {6, 1, 1})),
      test::without_sharing(hollow));
  const Mended done = mended(mesh, "cup.stl", MendAim::closed_solid);
  CHECK(done.mends.empty());
  const CheckedSolid before = checked_solid(mesh, "cup.stl");
  const CheckedSolid after = checked_solid(done.mesh, "cup.stl");
  CHECK(before.solid.vertices_mm == after.solid.vertices_mm);
  CHECK(before.solid.triangles == after.solid.triangles);
}

TEST_CASE("what cannot be mended soundly is refused with place and remedy", "[geometry][mending]") {
  using namespace test;
  const TriangleMesh cube = box({0, 0, 0}, {10, 10, 10});
  const TriangleMesh inner = box({3, 3, 3}, {6, 6, 6});
  const TriangleMesh wall{{{0, 0, 5}, {10, 0, 5}, {10, 10, 5}, {0, 10, 5}}, {{0, 1, 2}, {0, 2, 3}}};
  // A band of five facets whose last joins the first the other way round: Moebius's own.
  const TriangleMesh moebius{{{0, 0, 0}, {5, 9, 0}, {9, 0, 1}, {1, 5, 9}, {9, 9, 9}},
                             {{0, 1, 2}, {1, 2, 3}, {2, 3, 4}, {3, 4, 0}, {4, 0, 1}}};
  TriangleMesh open_cup = cup();
  std::erase_if(open_cup.triangles, [&](const auto& t) {
    return open_cup.vertices_mm[t[0]][2] == 40 && open_cup.vertices_mm[t[1]][2] == 40 &&
           open_cup.vertices_mm[t[2]][2] == 40;
  });
  const auto [mesh, says] = GENERATE_COPY(table<TriangleMesh, std::string>({
      {TriangleMesh{}, "holds no facets"},
      {without_facets(cube, {0, 1}), "largest of 1 hole, here, is 14.1 mm across"},
      {without_facets(cube, {0, 1}), "at (5, 5, 0) mm"},
      {open_cup, "too large to be filled by guess"},
      {open_cup, "too large to be filled by guess"},
      {jittered(cup(), 0.05), "corners that should be one lie more than 0.00"},
      {with_slit(cube, 3, {0, 2, 2}), "is open"},
      {together(cube, inner), "if it is a hollow, 0.973 ml are left around it, if not, 1 ml"},
      {inside_out(together(cube, inner)), "faces the same way"},
      {together(cube, box({10, 10, 0}, {20, 20, 10})), "they touch along an edge only"},
      {together(cube, inside_out(moved(cube, {5, 1, 1}))), "of which one is inside out"},
      {together(cube, inside_out(moved(inner, {5, 0, 0}))), "inside out"},
      {together(refined(cube), refined(wall)), "more than two facets"},
      {moebius, "is open"},
  }));
  INFO(says);
  try {
    const Mended done = mended(mesh, "cup.stl", MendAim::closed_solid);
    FAIL("not refused: " << (done.mends.empty() ? "no mends" : done.mends[0].what));
  } catch (const UserError& error) {
    CHECK(error.parts().file == "cup.stl");
    CHECK_FALSE(error.parts().remedy.empty());
    CHECK_THAT(error.what(), Contains(says));
  }
}

TEST_CASE("a solid pinched to touch itself along an edge is refused", "[geometry][mending]") {
  // Two cubes that share an edge and a bridge that joins them farther out would be one shell with
  // four facets at the edge; the smallest such solid is a frame of boxes round a square, whose
  // opening is drawn together until two corners meet.
  const TriangleMesh a = box({0, 0, 0}, {10, 10, 10});
  const TriangleMesh b = box({10, 10, 0}, {20, 20, 10});
  const TriangleMesh bridge = box({0, 0, 10}, {20, 20, 15});
  CHECK_THROWS_WITH(mended(together(together(a, b), bridge), "cup.stl", MendAim::closed_solid),
                    Contains("cup.stl: at ("));
}

TEST_CASE("a shell that crosses itself is not mended but refused", "[geometry][mending]") {
  TriangleMesh mesh = test::refined(box({0, 0, 0}, {10, 10, 10}));
  for (auto& p : mesh.vertices_mm) {
    if (p == test::Point{5, 5, 10}) p = {4, 6, -3};
  }
  const Mended done = mended(mesh, "cup.stl", MendAim::closed_solid);
  CHECK(done.mends.empty());
  CHECK_THROWS_WITH(checked_solid(done.mesh, "cup.stl"), Contains("crosses itself"));
}

TEST_CASE("a skin keeps its opening, gets its small holes filled and faces outward",
          "[geometry][mending]") {
  TriangleMesh skin = cup();
  std::erase_if(skin.triangles, [&](const auto& t) {
    return std::all_of(t.begin(), t.end(),
                       [&](std::uint32_t v) { return skin.vertices_mm[v][2] == 40; });
  });
  // Without its lid the cup's volume is the same as measured from a point of the lid's plane.
  const auto below_brim = [](const TriangleMesh& mesh) {
    return mm3(together(TriangleMesh{{{0, 0, 40}}, {}}, mesh));
  };
  const auto [mesh, mends] = GENERATE_COPY(table<TriangleMesh, std::size_t>({
      {skin, 0},
      {test::without_sharing(skin), 0},
      {inside_out(skin), 1},
      {test::without_facets(skin, {300, 301}), 1},
      {test::with_facets_turned(skin, {300, 400}), 1},
      {test::with_slit(skin, 300), 1},
      {test::jittered(skin, 1e-5), 1},
  }));
  const Mended done = mended(mesh, "skin.stl", MendAim::open_skin);
  CHECK(done.mends.size() == mends);
  CHECK_THAT(below_brim(done.mesh), WithinAbs(cup_mm3(), bound_mm3(done) + 1e-9 * cup_mm3()));
}

TEST_CASE("mending what was broken gives the volume back, within what it says",
          "[geometry][mending][law]") {
  rc::prop("for any few facets lost, turned, doubled or slit", [] {
    const TriangleMesh good = test::refined(
        test::turned({{20, 0}, {25, 7}, {15, 20}}, *rc::gen::inRange<std::uint32_t>(12, 40)));
    const auto facet = [&] { return *rc::gen::inRange<std::size_t>(0, good.triangles.size()); };
    TriangleMesh mesh = good;
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) mesh = test::with_slit(mesh, facet());
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
      mesh = test::with_facets_turned(mesh, {facet()});
    for (int i = *rc::gen::inRange(0, 2); i > 0; --i) mesh = test::with_facet_again(mesh, facet());
    for (int i = *rc::gen::inRange(0, 2); i > 0; --i) mesh = test::without_facets(mesh, {facet()});
    if (*rc::gen::arbitrary<bool>()) mesh = test::jittered(mesh, 1e-6);
    try {
      const Mended done = mended(mesh, "cup.stl", MendAim::closed_solid);
      const double error = std::abs(mm3(checked_solid(done.mesh, "cup.stl").solid) - mm3(good));
      RC_ASSERT(error <= bound_mm3(done) + 1e-9 * mm3(good));
    } catch (const UserError&) {
      RC_DISCARD("refused");
    }
  });
}

}  // namespace
}  // namespace brimwright::geometry
