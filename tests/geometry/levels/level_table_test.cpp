#include "geometry/levels/level_table.h"

#include "geometry/files/stl_file.h"
#include "geometry/levels/facet_curve.h"
#include "geometry/surface/weld.h"
#include "mesh_writers.h"
#include "scratch_file.h"
#include "solids.h"
#include "units/user_error.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <random>
#include <string>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::Point;
using test::ScratchFile;

double mm(Length l) { return l / millimetre; }
double mm2(Area a) { return a / square_millimetre; }
double mm3(Volume v) { return v / cubic_millimetre; }

StlLevelTable table_of_stl(const std::string& bytes, const Depths& depths) {
  const ScratchFile file("mesh.stl", bytes);
  return level_table_of_stl(file.path(), depths);
}

/// The mesh as its STL holds it: in single precision.
TriangleMesh as_stored(const TriangleMesh& mesh) {
  return binary_stl(test::binary_stl(mesh), "mesh.stl");
}

/// A tray of four unlike pockets in a block, its floor and rim flat: no shape with a formula of its
/// own, but boxes to add up.
TriangleMesh tray() {
  TriangleMesh mesh = test::box({0, 0, 0}, {100, 80, 30});
  for (const Point& low : {Point{5, 5, 4}, Point{55, 5, 10}, Point{5, 45, 4}, Point{55, 45, 26}}) {
    mesh = test::together(mesh, test::inside_out(test::box(low, {low[0] + 40, low[1] + 30, 29})));
  }
  return mesh;
}

std::vector<TriangleMesh> solids() {
  return {test::turned({{30, 0}, {40, 25}}, 72),
          test::ball(20, 60, 90),
          test::on_its_side(test::turned({{10, 0}, {25, 7.5}, {12, 40}}, 36)),
          test::turned_about_z(test::on_its_side(test::torus(40, 12.5, 48, 64)), 0.7),
          test::moved(test::obelisk(60, 40, 30.5, 20.25, 25), {300, -200, 500}),
          tray()};
}

TEST_CASE("a table's rows are the level curve at those depths", "[geometry][level table]") {
  for (const TriangleMesh& solid : solids()) {
    const TriangleMesh mesh = as_stored(solid);
    const FacetCurve curve(mesh);
    const double brimful = curve.brimful_mm3(), height = curve.height_mm();
    const double widest = std::abs(brimful) / height * 10;
    const StlLevelTable stl = table_of_stl(test::binary_stl(solid), even_depths(1000));
    const std::vector<LevelRow> rows = level_table(mesh, even_depths(1000));
    REQUIRE(rows.size() == 1000);
    REQUIRE(stl.rows.size() == 1000);
    CHECK(mm(stl.height) == height);
    CHECK(stl.closed == true);
    CHECK_FALSE(stl.inside_out);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const Level level = curve.at(std::min(mm(rows[i].depth), height));
      CHECK_THAT(mm3(rows[i].volume), WithinAbs(level.volume_mm3, 1e-13 * brimful));
      CHECK_THAT(mm2(rows[i].surface), WithinAbs(level.surface_mm2, 1e-13 * widest));
      CHECK_THAT(mm3(stl.rows[i].volume), WithinAbs(level.volume_mm3, 1e-13 * brimful));
      CHECK_THAT(mm2(stl.rows[i].surface), WithinAbs(level.surface_mm2, 1e-13 * widest));
    }
  }
}

TEST_CASE("a cone's table follows the cube of the depth", "[geometry][level table]") {
  // pi / 3 r^2 h with r = h, times the polygon's share (CRC Standard Mathematical Tables, ch. 4),
  // down to a thousandth of the height: 1e-9 of the volume.
  constexpr std::uint32_t n = 36;
  const TriangleMesh cone = test::turned({{0, 0}, {40, 40}}, n);
  for (const LevelRow& row : level_table(cone, even_depths(1000))) {
    const double h = mm(row.depth);
    const double pi = std::numbers::pi;
    CHECK_THAT(mm3(row.volume), WithinRel(test::polygon_share(n) * pi * h * h * h / 3, 1e-12));
    CHECK_THAT(mm2(row.surface), WithinRel(test::polygon_share(n) * pi * h * h, 1e-12));
  }
}

TEST_CASE("a tray's table is the sum of its boxes", "[geometry][level table]") {
  // Facets face into the block: 100 x 80 x 30 less four boxes of 40 x 30, of floors 4, 10, 4, 26.
  for (const LevelRow& row : level_table(tray(), even_depths(300))) {
    const double h = mm(row.depth);
    double volume = 8000 * h, surface = 8000;
    for (const double floor : {4.0, 10.0, 4.0, 26.0}) {
      volume -= 1200 * (std::clamp(h, floor, 29.0) - floor);
      surface -= h >= floor && h < 29 ? 1200 : 0;
    }
    INFO("depth " << h);
    CHECK_THAT(mm3(row.volume), WithinRel(volume, 1e-13));
    if (std::abs(h - std::round(h)) > 0.01 || h == 30) {
      CHECK_THAT(mm2(row.surface), WithinRel(surface, 1e-13));
    }
  }
}

TEST_CASE("depths may be asked for in any order, twice, and outside the solid",
          "[geometry][level table]") {
  const TriangleMesh box = test::box({0, 0, 10}, {60, 40, 35});
  const auto rows = level_table(box, at_depths({25 * millimetre, 5 * millimetre, -3 * millimetre,
                                                40 * millimetre, 5 * millimetre, 0 * millimetre}));
  const std::vector<double> filled_mm = {25, 5, 0, 25, 5, 0};
  REQUIRE(rows.size() == filled_mm.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    CHECK_THAT(mm3(rows[i].volume), WithinAbs(60 * 40 * filled_mm[i], 1e-9));  // on paper
    CHECK_THAT(mm2(rows[i].surface), WithinRel(60.0 * 40, 1e-13));
  }
  CHECK(mm(rows[3].depth) == 40);
  CHECK(level_table(box, at_depths({})).empty());
}

TEST_CASE("at a step the surface is the one just above it", "[geometry][level table]") {
  // A block with a wider block on top, joined: 20 x 20 to depth 10, then 40 x 40 to 20. On paper.
  const TriangleMesh steps =
      test::turned({{10, 0}, {10, 10}, {20, 10}, {20, 20}}, 4);  // squares on their corners
  const auto rows = level_table(
      steps, at_depths({0 * millimetre, 10 * millimetre, 15 * millimetre, 20 * millimetre}));
  const std::vector<double> surfaces = {200, 800, 800, 800};  // 2 r^2
  const std::vector<double> volumes = {0, 2000, 6000, 10000};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    CHECK_THAT(mm2(rows[i].surface), WithinRel(surfaces[i], 1e-13));
    CHECK_THAT(mm3(rows[i].volume), WithinAbs(volumes[i], 1e-9));
  }
}

TEST_CASE("where the lowest corner stands in its file does not matter", "[geometry][level table]") {
  // 5800 facets in three blocks; the tip, of one corner, is in turn in the first block, the middle
  // and the last, so that the first guess of the height holds or not.
  TriangleMesh mesh = test::on_its_side(test::ball(20, 30, 100));
  const auto before = table_of_stl(test::binary_stl(mesh), even_depths(50));
  const double brimful = mm3(before.rows.back().volume);
  for (std::size_t turns = 0; turns < 6; ++turns) {
    std::rotate(mesh.triangles.begin(), mesh.triangles.begin() + 997, mesh.triangles.end());
    const auto after = table_of_stl(test::binary_stl(mesh), even_depths(50));
    CHECK(after.height == before.height);
    CHECK(after.closed == true);
    for (std::size_t i = 0; i < 50; ++i) {
      CHECK_THAT(mm3(after.rows[i].volume), WithinAbs(mm3(before.rows[i].volume), 1e-13 * brimful));
    }
  }
}

TEST_CASE("a file whose height stands in one middle facet is read right",
          "[geometry][level table]") {
  // 40 blocks of level facets, two skins closed against each other, and in the middle one box that
  // alone reaches from -5 to 12: its volume on paper.
  TriangleMesh mesh;
  const auto sheet = [&](std::size_t pairs) {
    for (std::size_t i = 0; i < pairs; ++i) {
      const auto n = static_cast<std::uint32_t>(mesh.vertices_mm.size());
      mesh.vertices_mm.insert(mesh.vertices_mm.end(), {{0, 0, 1}, {3, 0, 1}, {0, 3, 2}});
      mesh.triangles.insert(mesh.triangles.end(), {{n, n + 1, n + 2}, {n, n + 2, n + 1}});
    }
  };
  sheet(35'000);
  mesh = test::together(mesh, test::box({0, 0, -5}, {10, 10, 12}));
  sheet(35'000);
  const auto table = table_of_stl(test::binary_stl(mesh), even_depths(17));
  CHECK(mm(table.height) == 17);
  CHECK(table.closed == true);
  for (const LevelRow& row : table.rows) {
    CHECK_THAT(mm3(row.volume), WithinRel(100 * mm(row.depth), 1e-11));
  }
}

TEST_CASE("a file large enough to be mapped gives the same table", "[geometry][level table]") {
  // A box of 64 x 64 x 32, its sides cut 8 times into four: 786 thousand facets, 39 MB, that single
  // precision holds exactly. Volumes on paper.
  TriangleMesh mesh = test::box({0, 0, 3}, {64, 64, 35});
  for (int cuts = 0; cuts < 8; ++cuts) mesh = test::refined(mesh);
  const auto table = table_of_stl(test::binary_stl(mesh), even_depths(1000));
  CHECK(table.closed == true);
  for (const LevelRow& row : table.rows) {
    CHECK_THAT(mm3(row.volume), WithinRel(64 * 64 * mm(row.depth), 1e-13));
    CHECK_THAT(mm2(row.surface), WithinRel(64.0 * 64, 1e-13));
  }
}

TEST_CASE("facets that cross a few depths and those that cross many add up alike",
          "[geometry][level table]") {
  // The same leaning prism, each side one facet high or cut into slices: at each depth, its base
  // of 6 by 4 goes up sideways, so volume and surface stay those of a block (Cavalieri).
  TriangleMesh whole = test::box({0, 0, 0}, {6, 4, 10});
  for (Point& p : whole.vertices_mm) p[0] += 1.5 * p[2];
  TriangleMesh cut = whole;
  for (int cuts = 0; cuts < 4; ++cuts) cut = test::refined(cut);
  for (const TriangleMesh& mesh : {whole, cut}) {
    for (const LevelRow& row : level_table(mesh, even_depths(333))) {
      CHECK_THAT(mm3(row.volume), WithinRel(24 * mm(row.depth), 1e-12));
      CHECK_THAT(mm2(row.surface), WithinRel(24.0, 1e-12));
    }
  }
}

TEST_CASE("a solid inside out is measured as if turned, and said to be",
          "[geometry][level table]") {
  const TriangleMesh cup = test::turned({{30, 0}, {40, 25}}, 48);
  const auto right = table_of_stl(test::binary_stl(cup), even_depths(20));
  const auto turned = table_of_stl(test::binary_stl(test::inside_out(cup)), even_depths(20));
  CHECK(turned.inside_out);
  for (std::size_t i = 0; i < 20; ++i) {
    CHECK_THAT(mm3(turned.rows[i].volume), WithinRel(mm3(right.rows[i].volume), 1e-13));
    CHECK_THAT(mm2(turned.rows[i].surface), WithinRel(mm2(right.rows[i].surface), 1e-12));
  }
}

TEST_CASE("a table of an open surface says that it is open", "[geometry][level table]") {
  TriangleMesh cup = test::turned({{30, 0}, {40, 25}}, 48);
  cup.triangles.pop_back();
  CHECK(table_of_stl(test::binary_stl(cup), even_depths(3)).closed == false);
}

TEST_CASE("a table refuses a corner that is not a number, wherever it stands",
          "[geometry][level table]") {
  const std::string sound = test::binary_stl(test::ball(20, 30, 100));
  const float bad =
      GENERATE(std::numeric_limits<float>::quiet_NaN(), std::numeric_limits<float>::infinity(),
               -std::numeric_limits<float>::infinity());
  const std::size_t facet = GENERATE(0, 5, 2047, 3000, 5799);
  const std::size_t number = GENERATE(range(std::size_t{0}, std::size_t{9}));
  std::string stl = sound;
  stl.replace(84 + 50 * facet + 12 + 4 * number, 4, reinterpret_cast<const char*>(&bad), 4);
  try {
    table_of_stl(stl, even_depths(100));
    FAIL("not refused");
  } catch (const UserError& error) {
    CHECK_THAT(error.what(), Contains("facet " + std::to_string(facet + 1) +
                                      ": has a corner that is not a number"));
  }
}

TEST_CASE("two halves of a pile of boxes make the whole, at any depths",
          "[geometry][level table][law]") {
  rc::prop("volumes add, and never fall as the depth grows", [] {
    const auto edge = rc::gen::map(rc::gen::inRange(1, 400), [](int x) { return x * 0.125; });
    TriangleMesh pile;
    double brimful = 0;
    std::vector<std::array<double, 4>> boxes;  // bottom, top, width, length
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i) {
      const double bottom = *edge, height = *edge, width = *edge, length = *edge;
      boxes.push_back({bottom, bottom + height, width, length});
      pile = test::together(
          pile, test::box({100.0 * i, 0, bottom}, {100.0 * i + width, length, bottom + height}));
      brimful += height * width * length;
    }
    double lowest = boxes[0][0];
    for (const auto& box : boxes) lowest = std::min(lowest, box[0]);
    const auto depths = *rc::gen::container<std::vector<double>>(edge);
    std::vector<Length> asked;
    for (const double depth : depths) asked.push_back(depth * millimetre);
    const auto rows = table_of_stl(test::binary_stl(pile), at_depths(asked)).rows;
    RC_ASSERT(rows.size() == depths.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
      double expected = 0;  // length times width times height, box by box
      for (const auto& [bottom, top, width, length] : boxes) {
        expected += width * length * (std::clamp(lowest + depths[i], bottom, top) - bottom);
      }
      RC_ASSERT(std::abs(mm3(rows[i].volume) - expected) <= 1e-12 * brimful);
    }
  });
}

}  // namespace
}  // namespace brimwright::geometry
