#include "geometry/levels/facet_curve.h"
#include "geometry/levels/level_curve.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace brimwright::geometry {
namespace {

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::Point;

double mm(Length l) { return l / millimetre; }
double mm2(Area a) { return a / square_millimetre; }
double mm3(Volume v) { return v / cubic_millimetre; }

std::vector<LevelRow> level_table(const TriangleMesh& solid, const std::vector<Length>& depths) {
  return LevelCurve::of_solid(solid).levels(depths);
}

/// At height / count, twice that, and so on to the brim.
std::vector<LevelRow> level_table(const TriangleMesh& solid, std::size_t count) {
  const LevelCurve curve = LevelCurve::of_solid(solid);
  std::vector<Length> depths;
  for (std::size_t i = 1; i <= count; ++i)
    depths.push_back(curve.height() * (static_cast<double>(i) / static_cast<double>(count)));
  return curve.levels(depths);
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
  for (const TriangleMesh& mesh : solids()) {
    const FacetCurve curve(mesh);
    const double brimful = curve.brimful_mm3(), height = curve.height_mm();
    const double widest = std::abs(brimful) / height * 10;
    const std::vector<LevelRow> rows = level_table(mesh, 1000);
    REQUIRE(rows.size() == 1000);
    for (const LevelRow& row : rows) {
      const Level level = curve.at(std::min(mm(row.depth), height));
      CHECK_THAT(mm3(row.volume), WithinAbs(level.volume_mm3, 1e-13 * brimful));
      CHECK_THAT(mm2(row.surface), WithinAbs(level.surface_mm2, 1e-13 * widest));
    }
  }
}

TEST_CASE("a cone's table follows the cube of the depth", "[geometry][level table]") {
  // pi / 3 r^2 h with r = h, times the polygon's share (CRC Standard Mathematical Tables, ch. 4),
  // down to a thousandth of the height: 1e-9 of the volume.
  constexpr std::uint32_t n = 36;
  const TriangleMesh cone = test::turned({{0, 0}, {40, 40}}, n);
  for (const LevelRow& row : level_table(cone, 1000)) {
    const double h = mm(row.depth);
    const double pi = std::numbers::pi;
    CHECK_THAT(mm3(row.volume), WithinRel(test::polygon_share(n) * pi * h * h * h / 3, 1e-12));
    CHECK_THAT(mm2(row.surface), WithinRel(test::polygon_share(n) * pi * h * h, 1e-12));
  }
}

TEST_CASE("a tray's table is the sum of its boxes", "[geometry][level table]") {
  // Facets face into the block: 100 x 80 x 30 less four boxes of 40 x 30, of floors 4, 10, 4, 26.
  for (const LevelRow& row : level_table(tray(), 300)) {
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
  const auto rows =
      level_table(box, std::vector<Length>{25 * millimetre, 5 * millimetre, -3 * millimetre,
                                           40 * millimetre, 5 * millimetre, 0 * millimetre});
  const std::vector<double> filled_mm = {25, 5, 0, 25, 5, 0};
  REQUIRE(rows.size() == filled_mm.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    CHECK_THAT(mm3(rows[i].volume), WithinAbs(60 * 40 * filled_mm[i], 1e-9));  // on paper
    CHECK_THAT(mm2(rows[i].surface), WithinRel(60.0 * 40, 1e-13));
  }
  CHECK(mm(rows[3].depth) == 40);
  CHECK(level_table(box, std::vector<Length>{}).empty());
}

TEST_CASE("at a step the surface is the one just above it", "[geometry][level table]") {
  // A block with a wider block on top, joined: 20 x 20 to depth 10, then 40 x 40 to 20. On paper.
  const TriangleMesh steps =
      test::turned({{10, 0}, {10, 10}, {20, 10}, {20, 20}}, 4);  // squares on their corners
  const auto rows = level_table(steps, std::vector<Length>{0 * millimetre, 10 * millimetre,
                                                           15 * millimetre, 20 * millimetre});
  const std::vector<double> surfaces = {200, 800, 800, 800};  // 2 r^2
  const std::vector<double> volumes = {0, 2000, 6000, 10000};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    CHECK_THAT(mm2(rows[i].surface), WithinRel(surfaces[i], 1e-13));
    CHECK_THAT(mm3(rows[i].volume), WithinAbs(volumes[i], 1e-9));
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
    for (const LevelRow& row : level_table(mesh, 333)) {
      CHECK_THAT(mm3(row.volume), WithinRel(24 * mm(row.depth), 1e-12));
      CHECK_THAT(mm2(row.surface), WithinRel(24.0, 1e-12));
    }
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
    const auto rows = level_table(pile, asked);
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
