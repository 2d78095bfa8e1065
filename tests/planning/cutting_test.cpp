#include "planning/cutting.h"

#include "geometry/sections/filled_part.h"
#include "geometry/surface/enclosed_volume.h"
#include "planning/dividing.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
namespace test = brimwright::geometry::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const Place place{"loaf.run.json", "/cut"};
constexpr double paper = 1e-6;  // ml and mm; rounding only

using Solids = std::vector<geometry::TriangleMesh>;

Solids block(double x, double y, double z) { return {test::box({0, 0, 0}, {x, y, z})}; }

Cut slices(double thickness_mm, double kerf_mm = 0) {
  return {.bar = Slices{thickness_mm * millimetre}, .kerf = kerf_mm * millimetre};
}

Cut grid(double length_mm, double width_mm, double kerf_mm = 0) {
  return {.bar = Grid{length_mm * millimetre, width_mm * millimetre}, .kerf = kerf_mm * millimetre};
}

double ml(Volume volume) { return volume / millilitre; }

Volume sum(const CutTally& tally) {
  Volume bars;
  for (const Bar& bar : tally.bars) bars += bar.volume;
  return bars + tally.offcuts + tally.kerf + tally.planing;
}

/// A loaf mould of 250 x 80 mm at the brim and 240 x 70 mm at the floor, 65 mm high.
Solids leaning_loaf() { return {test::obelisk(240, 70, 250, 80, 65)}; }

Length some_mm(int least_tenths, int most_tenths) {
  return *rc::gen::inRange(least_tenths, most_tenths) * 0.1 * millimetre;
}

Solids any_loaf() {
  const auto mm = [](int least, int most) { return *rc::gen::inRange(least, most) * 1.0; };
  switch (*rc::gen::inRange(0, 3)) {
    case 0:
      return block(mm(60, 300), mm(40, 100), mm(30, 80));
    case 1:
      return {test::obelisk(mm(100, 240), mm(40, 70), mm(100, 260), mm(45, 90), mm(30, 80))};
    default: {
      const double low = mm(40, 80), high = mm(40, 80), middle = mm(5, 20), top = middle + 20;
      return {test::turned({{low, 0}, {low + 5, middle}}, 24),
              test::turned({{low + 5, middle}, {high, top}}, 24)};
    }
  }
}

Cut any_cut() {
  Cut cut = *rc::gen::arbitrary<bool>() ? slices(0) : grid(0, 0);
  if (auto* bar = std::get_if<Slices>(&cut.bar)) bar->thickness = some_mm(50, 400);
  if (auto* bar = std::get_if<Grid>(&cut.bar)) *bar = {some_mm(100, 300), some_mm(100, 300)};
  cut.end_trim = some_mm(0, 60);
  cut.side_trim = some_mm(0, 40);
  cut.top_planing = some_mm(0, 80);
  cut.kerf = some_mm(0, 30);
  cut.face_planing = some_mm(0, 10);
  return cut;
}

}  // namespace

TEST_CASE("a wire cuts a loaf of 250 x 80 x 65 mm into ten bars of 25 mm with nothing left",
          "[planning]") {
  const CutTally tally = cut_of(slices(25), block(250, 80, 65), 1, place);
  REQUIRE(tally.bars.size() == 10);
  CHECK(tally.along == Axis::x);
  for (const Bar& bar : tally.bars) {
    CHECK_THAT(ml(bar.volume), WithinAbs(130, paper));  // 25 x 80 x 65 mm
    CHECK_THAT(bar.along / millimetre, WithinAbs(25, paper));
    CHECK_THAT(bar.across / millimetre, WithinAbs(80, paper));
    CHECK_THAT(bar.height / millimetre, WithinAbs(65, paper));
  }
  CHECK_THAT(ml(tally.loaf), WithinAbs(1300, paper));
  CHECK_THAT(ml(tally.offcuts + tally.kerf + tally.planing), WithinAbs(0, paper));
  CHECK_THAT(tally.in_bars() / tally.loaf, WithinRel(1.0, 1e-12));
  CHECK(tally.remarks.empty());
}

TEST_CASE("a saw's kerf costs the tenth bar", "[planning]") {
  const CutTally tally = cut_of(slices(25, 1), block(250, 80, 65), 1, place);
  // 9 x 25 + 8 x 1 = 233 mm; of the 17 mm left one more cut takes 1. 80 x 65 mm are 5.2 ml per mm.
  CHECK(tally.bars.size() == 9);
  CHECK_THAT(ml(tally.kerf), WithinAbs(9 * 5.2, paper));
  CHECK_THAT(ml(tally.offcuts), WithinAbs(16 * 5.2, paper));
  // Ten bars and nine cuts: (250 - 9) / 10.
  REQUIRE(tally.one_more.size() == 1);
  CHECK_THAT(tally.one_more[0].size / millimetre, WithinAbs(24.1, 1e-9));
  CHECK(tally.one_more[0].bars == 10);
}

TEST_CASE("a size at which a loaf gives one bar more is not rounded up to one at which it does not",
          "[planning]") {
  // (250 - 9 x 1.69) / 10 = 23.479 mm, 0.92437 in: at 23.5 mm it gives nine.
  const CutTally tally = cut_of(slices(25, 1.69), block(250, 80, 65), 1, place);
  REQUIRE(tally.one_more.size() == 1);
  CHECK(tally.one_more[0].text == "23.4 mm (0.92 in)");
  CHECK(cut_of(slices(23.4, 1.69), block(250, 80, 65), 1, place).bars.size() == 10);
  CHECK(cut_of(slices(0.92 * 25.4, 1.69), block(250, 80, 65), 1, place).bars.size() == 10);
  CHECK(cut_of(slices(23.5, 1.69), block(250, 80, 65), 1, place).bars.size() == 9);
}

TEST_CASE("trims, planing and kerf are each accounted for", "[planning]") {
  Cut cut = slices(25, 1);
  cut.end_trim = 5 * millimetre;
  cut.side_trim = 3 * millimetre;
  cut.top_planing = 5 * millimetre;
  cut.face_planing = 0.5 * millimetre;
  const CutTally tally = cut_of(cut, block(250, 80, 65), 1, place);
  // 240 mm are left; n bars take 26 n + (n - 1): 8 take 215. The remnant of 25 is 1 kerf, 24
  // offcut.
  REQUIRE(tally.bars.size() == 8);
  CHECK_THAT(ml(tally.bars[3].volume), WithinAbs(25 * 74 * 60e-3, paper));
  CHECK_THAT(tally.bars[3].across / millimetre, WithinAbs(74, paper));
  CHECK_THAT(tally.bars[3].height / millimetre, WithinAbs(60, paper));
  // Sides are sawn along the whole loaf, ends and bars across what is left of its width.
  CHECK_THAT(ml(tally.kerf), WithinAbs(2 * 250 * 60e-3 + (2 + 7 + 1) * 74 * 60e-3, paper));
  CHECK_THAT(ml(tally.offcuts), WithinAbs(2 * 2 * 250 * 60e-3 + (2 * 4 + 24) * 74 * 60e-3, paper));
  CHECK_THAT(ml(tally.planing), WithinAbs(5 * 250 * 80e-3 + 8 * 74 * 60e-3, paper));
  CHECK_THAT(ml(sum(tally)), WithinAbs(1300, paper));
}

TEST_CASE("of a slab's two orientations the one with more bars is taken and both are told",
          "[planning]") {
  const Solids slab = block(200, 300, 30);
  const CutTally tally = cut_of(grid(80, 55), slab, 1, place);
  // Lengthwise 300/80 = 3 by 200/55 = 3; crosswise 300/55 = 5 by 200/80 = 2.
  CHECK(tally.bars.size() == 10);
  CHECK(tally.other_way == 9);
  CHECK(tally.along == Axis::y);
  CHECK(tally.length_lies == Axis::x);
  CHECK(tally.columns == 5);
  CHECK(tally.rows == 2);
  CHECK_THAT(tally.bars[0].along / millimetre, WithinAbs(55, paper));
  CHECK_THAT(tally.bars[0].across / millimetre, WithinAbs(80, paper));
  CHECK_THAT(ml(tally.bars[0].volume), WithinAbs(80 * 55 * 30e-3, paper));
  // A sixth column at 300 / 6, a third row at 200 / 3.
  REQUIRE(tally.one_more.size() == 2);
  CHECK_THAT(tally.one_more[0].size / millimetre, WithinAbs(50, 1e-9));
  CHECK(tally.one_more[0].bars == 12);
  CHECK_THAT(tally.one_more[1].size / millimetre, WithinAbs(66.6, 1e-9));  // rounded down
  CHECK(tally.one_more[1].bars == 15);

  Cut chosen = grid(80, 55);
  chosen.along = Axis::y;
  const CutTally lengthwise = cut_of(chosen, slab, 1, place);
  CHECK(lengthwise.bars.size() == 9);
  CHECK(lengthwise.other_way == 10);
}

TEST_CASE("a grid's bars are planed on four sides", "[planning]") {
  Cut cut = grid(48, 28, 2);
  cut.face_planing = 1 * millimetre;
  const CutTally tally = cut_of(cut, block(152, 92, 20), 1, place);
  // Blanks of 50 x 30 and cuts of 2 mm. 3 x 50 + 2 x 2 = 154 and 3 x 30 + 2 x 2 = 94 are too long
  // by 2: so 2 by 2. The other way 5 x 30 + 4 x 2 = 158 is too long and 2 x 50 + 2 too wide: 4
  // by 1.
  CHECK(tally.bars.size() == 4);
  CHECK(tally.other_way == 4);
  // A blank is 50 x 30, a bar 48 x 28 mm.
  CHECK_THAT(ml(tally.planing), WithinAbs(4 * (50 * 30 - 48 * 28) * 20e-3, paper));
  // Rows through 152 mm: 2 cuts of 2 mm; columns through two rows of 30 mm: 2 cuts of 2 mm.
  CHECK_THAT(ml(tally.kerf), WithinAbs((2 * 2 * 152 + 2 * 2 * 60) * 20e-3, paper));
  CHECK_THAT(ml(sum(tally)), WithinAbs(152 * 92 * 20e-3, paper));
}

TEST_CASE("the end bars of a loaf with leaning walls are smaller, by the frustum's formula",
          "[planning]") {
  const CutTally tally = cut_of(slices(25), leaning_loaf(), 1, place);
  REQUIRE(tally.bars.size() == 10);
  // Inner sections are trapezoids, 70 and 80 wide, 65 high: 4875 mm2. Of the last 5 mm, with u from
  // 0 to 1, 4550 (1 - u) + 325 (1 - u2) is left: 5 (4550 / 2 + 325 x 2 / 3) = 12458.333 mm3.
  CHECK_THAT(ml(tally.greatest), WithinAbs(4.875 * 25, paper));
  CHECK_THAT(ml(tally.least), WithinAbs(4.875 * 20 + 12.458333333, paper));
  CHECK(tally.bars.front().volume < 0.91 * tally.greatest);
  // The prismoid's formula: 65 / 6 (240 x 70 + 250 x 80 + 4 x 245 x 75) = 1194916.667 mm3.
  CHECK_THAT(ml(tally.loaf), WithinAbs(1194.916666667, paper));
  CHECK_THAT(ml(tally.mean), WithinAbs(119.4916666667, paper));
  CHECK_THAT(tally.bars.back().height / millimetre, WithinAbs(65, paper));
}

TEST_CASE("bars of a loaf with steep ends are told to be unlike, and trimming mends it",
          "[planning]") {
  const Solids steep = {test::obelisk(210, 70, 250, 80, 65)};
  CHECK_THAT(cut_of(slices(25), steep, 1, place).remarks.at(0).text, Contains("not alike"));
  Cut trimmed = slices(25);
  trimmed.end_trim = 20 * millimetre;
  const CutTally tally = cut_of(trimmed, steep, 1, place);
  CHECK(tally.remarks.empty());
  CHECK_THAT(tally.least / tally.greatest, WithinRel(1.0, 1e-9));
}

TEST_CASE("corners of a round slab that hold less than half a bar are offcuts", "[planning]") {
  // A square of 50 mm at the corner of a circle of 100 mm: the integral of sqrt(100^2 - x^2) - 50
  // from 50 to 86.6025 is 787.87 mm2 of 2500; the flat facets are 1e-5 short of the circle.
  const Solids round = {test::turned({{100, 0}, {100, 30}}, 720)};
  const CutTally tally = cut_of(grid(50, 50), round, 1, place);
  CHECK(tally.bars.size() == 12);
  CHECK_THAT(ml(tally.offcuts), WithinRel(4 * 787.87 * 30e-3, 1e-3));
  CHECK_THAT(tally.remarks.at(0).text, Contains("4 of 16 pieces"));
}

TEST_CASE("a column is cut into rounds when told to", "[planning]") {
  const Solids column = {test::turned({{30, 0}, {30, 200}}, 360)};
  CHECK_THROWS_WITH(cut_of(slices(25), column, 1, place), Contains("which way to slice"));
  Cut cut = slices(25);
  cut.along = Axis::z;
  const CutTally tally = cut_of(cut, column, 1, place);
  REQUIRE(tally.bars.size() == 8);
  CHECK_THAT(ml(tally.bars[0].volume), WithinRel(pi * 30 * 30 * 25e-3, 1e-4));  // 360 flat facets
  CHECK_THAT(tally.bars[0].across / millimetre, WithinAbs(60, 0.01));
}

TEST_CASE("each bar keeps its layers, also those of a sloping pour", "[planning]") {
  // The first layer's surface falls from 22 mm at x = 100 to 2 mm at x = 0; the loaf is 30 high.
  const geometry::Plane slope{{-0.2 / std::sqrt(1.04), 0, 1 / std::sqrt(1.04)},
                              2 / std::sqrt(1.04)};
  const auto whole = block(100, 50, 30)[0];
  const Solids layers = {part_below(whole, slope), part_above(whole, slope)};
  const CutTally tally = cut_of(slices(20), layers, 1, place);
  REQUIRE(tally.bars.size() == 5);
  for (std::size_t i = 0; i < 5; ++i) {
    const double middle =
        2 + 0.2 * (20.0 * static_cast<double>(i) + 10);  // of the slope in the bar
    CHECK_THAT(ml(tally.bars[i].layers[0]), WithinAbs(20 * 50 * middle * 1e-3, paper));
    CHECK_THAT(ml(tally.bars[i].layers[1]), WithinAbs(20 * 50 * (30 - middle) * 1e-3, paper));
  }
}

TEST_CASE("a mould that holds more than its solid yields bars that hold more", "[planning]") {
  const CutTally tally = cut_of(slices(25), block(250, 80, 65), 1.03, place);
  CHECK_THAT(ml(tally.bars[0].volume), WithinAbs(130 * 1.03, paper));
  CHECK_THAT(ml(tally.bars[0].layers[0]), WithinAbs(130 * 1.03, paper));
  CHECK_THAT(ml(tally.loaf), WithinAbs(1300 * 1.03, paper));
}

TEST_CASE("a loaf whose length is short by single precision's rounding keeps its last bar",
          "[planning]") {
  const double near = 249.99998;  // 250 mm, written in metres as a float
  const CutTally tally = cut_of(slices(25), block(near, 80, 65), 1, place);
  CHECK(tally.bars.size() == 10);
  CHECK_THAT(ml(sum(tally)), WithinAbs(near * 80 * 65e-3, paper));
  CHECK(cut_of(slices(25), block(249.9, 80, 65), 1, place).bars.size() == 9);
}

TEST_CASE("cuts that cannot be are refused with what would fit", "[planning]") {
  struct Row {
    Cut cut;
    std::string field, said;
  };
  const auto with = [](Cut cut, auto change) {
    change(cut);
    return cut;
  };
  const auto row = GENERATE_COPY(values<Row>({
      {slices(260), "/cut/bar/thickness", "the loaf is 250 mm long after trimming"},
      {slices(260), "/cut/bar/thickness", "give at most 250 mm"},
      {with(slices(248),
            [](Cut& cut) {
              cut.end_trim = 1 * millimetre;
              cut.face_planing = 1 * millimetre;
            }),
       "/cut/bar/thickness", "248 mm long after trimming and before planing; give at most 246 mm"},
      {with(slices(25), [](Cut& cut) { cut.end_trim = 125 * millimetre; }), "/cut/end_trim",
       "takes 250 mm off a loaf of 250 mm"},
      {with(slices(25), [](Cut& cut) { cut.side_trim = 41 * millimetre; }), "/cut/side_trim",
       "trim at most 39.5 mm (1.55 in) off each"},
      {with(slices(25), [](Cut& cut) { cut.top_planing = 65 * millimetre; }), "/cut/top_planing",
       "all of it is 65 mm high; plane off at most 64 mm"},
      {with(slices(25), [](Cut& cut) { cut.face_planing = 125 * millimetre; }), "/cut/face_planing",
       "250 mm long after trimming; plane off at most 112.5 mm"},
      {with(grid(100, 50), [](Cut& cut) { cut.face_planing = 40 * millimetre; }),
       "/cut/face_planing", "leaves nothing of a bar; plane off at most 15 mm"},
      {slices(0.001), "/cut/bar", "more than 5000 pieces"},
      {grid(260, 70), "/cut/bar", "is 260 mm x 70 mm, and the slab is 250 mm x 80 mm"},
      // 3.15 in are 80.01 mm: a hundredth does not matter to a saw.
      {grid(100, 90), "/cut/bar", "give at most 250 mm (9.84 in) x 80 mm (3.15 in)"},
      {with(grid(100, 50), [](Cut& cut) { cut.along = Axis::y; }), "/cut/bar",
       "leave out \"along\": it fits the other way"},
      {with(grid(100, 50), [](Cut& cut) { cut.along = Axis::z; }), "/cut/along", "cut on the plan"},
  }));
  CAPTURE(row.said);
  try {
    cut_of(row.cut, block(250, 80, 65), 1, place);
    FAIL("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == row.field);
    CHECK_THAT(std::string(error.what()), Contains(row.said));
  }
}

TEST_CASE("bars, offcuts, kerf and planing are the loaf", "[planning][law]") {
  rc::prop("nothing is lost and nothing is counted twice", [] {
    const Solids loaf = any_loaf();
    const Cut cut = any_cut();
    Volume whole;
    for (const auto& layer : loaf) whole += enclosed_volume(layer);
    try {
      const CutTally tally = cut_of(cut, loaf, 1, place);
      RC_ASSERT(abs(sum(tally) - whole) < 1e-9 * whole);
      for (const Bar& bar : tally.bars) {
        Volume layers;
        for (const Volume layer : bar.layers) layers += layer;
        RC_ASSERT(abs(layers - bar.volume) < 1e-9 * bar.volume);
      }
      RC_ASSERT(abs(tally.in_bars() + tally.offcuts + tally.kerf + tally.planing - whole) <
                1e-9 * whole);
    } catch (const UserError&) {
      RC_DISCARD("the bar is larger than the loaf");
    }
  });
}

TEST_CASE("each bar is what two planes leave of the loaf", "[planning][law]") {
  rc::prop("by level curves as by cutting the mesh", [] {
    const Solids loaf = {test::obelisk(200, 60, *rc::gen::inRange(200, 260) * 1.0,
                                       *rc::gen::inRange(60, 90) * 1.0, 50)};
    const double low = bounding_box(loaf[0]).low_mm[0];
    Cut cut = slices(*rc::gen::inRange(100, 400) * 0.1, *rc::gen::inRange(0, 30) * 0.1);
    const CutTally tally = cut_of(cut, loaf, 1, place);
    const double size = std::get<Slices>(cut.bar).thickness / millimetre;
    for (const Bar& bar : tally.bars) {
      const double from = low + static_cast<double>(bar.column) * (size + cut.kerf / millimetre);
      const auto piece =
          part_below(part_above(loaf[0], {{1, 0, 0}, from}), {{1, 0, 0}, from + size});
      RC_ASSERT(abs(bar.volume - enclosed_volume(piece)) < 1e-9 * bar.volume);
      const auto box = bounding_box(piece);
      RC_ASSERT(std::abs(bar.across / millimetre - (box.high_mm[1] - box.low_mm[1])) < 1e-5);
      RC_ASSERT(std::abs(bar.height / millimetre - (box.high_mm[2] - box.low_mm[2])) < 1e-5);
    }
  });
}

TEST_CASE("each bar of a grid is what four planes and the plane over it leave of the slab",
          "[planning][law]") {
  rc::prop("trimmed and planed, by level curves as by cutting the mesh", [] {
    const Solids slab = {test::turned({{70, 0}, {85, 25}, {80, 40}}, 20)};
    Cut cut = grid(*rc::gen::inRange(200, 400) * 0.1, *rc::gen::inRange(200, 400) * 0.1, 1.5);
    cut.along = Axis::x;
    cut.end_trim = some_mm(0, 100);
    cut.side_trim = some_mm(0, 100);
    cut.top_planing = some_mm(0, 100);
    cut.face_planing = some_mm(0, 10);
    const auto box = bounding_box(slab[0]);
    const auto top = geometry::Plane::level(box.high_mm[2] - cut.top_planing / millimetre);
    const auto part = [&](std::size_t axis, const geometry::TriangleMesh& of, std::int64_t number,
                          Length size, Length trim) {
      const Length step = size + 2 * cut.face_planing + cut.kerf;
      const double from =
          box.low_mm[axis] +
          (trim + static_cast<double>(number) * step + cut.face_planing) / millimetre;
      geometry::Plane plane{{0, 0, 0}, from};
      plane.normal[axis] = 1;
      const auto above = part_above(of, plane);
      plane.offset_mm += size / millimetre;
      return part_below(above, plane);
    };
    const CutTally tally = cut_of(cut, slab, 1, place);
    const auto& [length, width] = std::get<Grid>(cut.bar);
    RC_ASSERT(tally.along == Axis::x);
    const auto planed = part_below(slab[0], top);
    for (const Bar& bar : tally.bars) {
      const auto row = part(1, planed, bar.row, width, cut.side_trim);
      const auto piece = part(0, row, bar.column, length, cut.end_trim);
      RC_ASSERT(abs(bar.volume - enclosed_volume(piece)) < 1e-9 * bar.volume);
      const auto reach = bounding_box(piece);
      RC_ASSERT(std::abs(bar.along / millimetre - (reach.high_mm[0] - reach.low_mm[0])) < 1e-5);
      RC_ASSERT(std::abs(bar.across / millimetre - (reach.high_mm[1] - reach.low_mm[1])) < 1e-5);
    }
  });
}

TEST_CASE("the count is the greatest that fits", "[planning][law]") {
  rc::prop("so many bars and the cuts between them fit, and one more does not", [] {
    const Division division{.from = Length{},
                            .to = some_mm(500, 5000),
                            .trim = some_mm(0, 100),
                            .size = some_mm(30, 600),
                            .kerf = some_mm(0, 40),
                            .planing = some_mm(0, 20)};
    const auto needs = [&](double n) {
      return n * (division.size + 2 * division.planing) + (n - 1) * division.kerf;
    };
    const auto bars = static_cast<double>(division.bars());
    const Length hair = 0.01 * millimetre;
    if (bars > 0) RC_ASSERT(needs(bars) <= division.usable() + hair);
    RC_ASSERT(needs(bars + 1) > division.usable());
    if (bars > 0) {
      Division finer = division;
      finer.size = division.largest(division.bars() + 1);
      if (finer.size > Length{}) RC_ASSERT(finer.bars() == division.bars() + 1);
      finer.size += 2 * hair;
      if (finer.size > 2 * hair) RC_ASSERT(finer.bars() <= division.bars() + 1);
    }
  });
}

TEST_CASE("thinner bars are never fewer", "[planning][law]") {
  rc::prop("of a block", [] {
    Cut thick = slices(*rc::gen::inRange(100, 500) * 0.1, *rc::gen::inRange(0, 30) * 0.1);
    Cut thin = thick;
    std::get<Slices>(thin.bar).thickness = std::get<Slices>(thick.bar).thickness - some_mm(1, 90);
    const Solids loaf = block(*rc::gen::inRange(60, 400) * 1.0, 55, 40);
    RC_ASSERT(cut_of(thin, loaf, 1, place).bars.size() >=
              cut_of(thick, loaf, 1, place).bars.size());
  });
}

TEST_CASE("on a square slab it does not matter which way the bars lie", "[planning][law]") {
  rc::prop("both orientations give the same", [] {
    const double side = *rc::gen::inRange(100, 300) * 1.0;
    Cut cut = grid(*rc::gen::inRange(200, 900) * 0.1, *rc::gen::inRange(200, 900) * 0.1, 1);
    cut.end_trim = cut.side_trim = some_mm(0, 50);
    cut.along = *rc::gen::arbitrary<bool>() ? Axis::x : Axis::y;
    const CutTally tally = cut_of(cut, block(side, side, 30), 1, place);
    RC_ASSERT(tally.other_way == static_cast<std::int64_t>(tally.bars.size()));
  });
}
