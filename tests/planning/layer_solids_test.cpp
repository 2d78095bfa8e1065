#include "planning/layer_solids.h"

#include "geometry/repair/mesh_checks.h"
#include "geometry/surface/enclosed_volume.h"
#include "moulds/mould_solid.h"
#include "moulds/shape_curve.h"
#include "moulds/shape_solid.h"
#include "planning/cutting.h"
#include "planning/layers.h"
#include "sample_run.h"
#include "solids.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <cmath>

using namespace brimwright;
using namespace brimwright::planning;
namespace test = brimwright::geometry::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const Place place{"loaf.run.json", "/pour/layers"};
const Density plain = 1 * gram_per_millilitre;
constexpr double paper = 1e-6;

/// A tilt whose surface falls one in five, seen in the level mould.
geometry::Tilt one_in_five(double low_side_degrees) {
  return {Angle::in_radians(std::atan(0.2)), Angle::in_degrees(low_side_degrees)};
}

geometry::Tilt tilt(double degrees, double low_side_degrees = 0) {
  return {Angle::in_degrees(degrees), Angle::in_degrees(low_side_degrees)};
}

/// 100 x 50 mm and 40 mm high; a millimetre is 5 ml.
geometry::TriangleMesh block() { return test::box({0, 0, 0}, {100, 50, 40}); }

double ml_of(const LayerSolid& layer) { return enclosed_volume(layer.solid) / millilitre; }

/// Two wells of 40 mm with a ridge of 20 mm between them, along y; 50 mm high, 30 mm wide.
geometry::TriangleMesh two_wells() {
  const auto mm = [](double up, double y) { return std::pair{up * millimetre, y * millimetre}; };
  const moulds::FreeOutline outline{.points = {mm(0, 0), mm(0, 40), mm(20, 40), mm(20, 60),
                                               mm(0, 60), mm(0, 100), mm(50, 100), mm(50, 0)},
                                    .height = 30 * millimetre,
                                    .draft = {}};
  return test::on_its_side(moulds::solid_of(outline, 4));
}

/// A run with layers in a real block of 100 x 50 x 40 mm, its low corner anywhere.
Run block_run(std::vector<Layer> layers) {
  Run run = paper_run();
  const moulds::Block shape{100 * millimetre, 50 * millimetre, 40 * millimetre, {}, {}};
  run.pour.mould.shape = shape;
  run.pour.mould.curve = moulds::level_curve(shape);
  run.pour.layers = std::move(layers);
  return run;
}

std::vector<LayerTally> layers_to_30_mm(const Run& run) {
  return layers_of(run, cavity_of(run), FreeCurve(run.pour.mould.curve), 30 * millimetre, plain);
}

}  // namespace

TEST_CASE("a small pour into a tilted block is a wedge along its low side", "[planning]") {
  // It wets 80 mm of the floor and 80 tan 10 deg = 14.1062 mm of the wall, over 50 mm of width.
  const double wall = 80 * std::tan(pi / 18), wedge = 80 * wall / 2 * 50e-3;
  const auto layers = layer_solids(
      block(), {{wedge * millilitre, tilt(10)}, {(150 - wedge) * millilitre, {}}}, 1, place);
  REQUIRE(layers.size() == 2);
  CHECK_THAT(ml_of(layers[0]), WithinAbs(wedge, paper));
  CHECK_THAT(layers[0].from / millimetre, WithinAbs(0, paper));
  CHECK_THAT(layers[0].to / millimetre, WithinAbs(wall, paper));
  CHECK_THAT(ml_of(layers[1]), WithinAbs(150 - wedge, paper));
  CHECK_THAT(layers[1].from / millimetre, WithinAbs(0, paper));  // what the wedge left dry
  CHECK_THAT(layers[1].to / millimetre, WithinAbs(30, paper));
  const auto box = bounding_box(layers[0].solid);
  CHECK_THAT(box.low_mm[0], WithinAbs(20, paper));  // the low side is +x
  CHECK_THAT(box.high_mm[0], WithinAbs(100, paper));
}

TEST_CASE("layers poured with the mould tilted to either side meet in a ridge", "[planning]") {
  // The first surface rises from 2 to 22 mm. The second falls from 22: above it up to x = 50, where
  // both are 12: a triangle of 20 x 50 / 2 = 500 mm2. Level to 30: what is left of 3000 mm2.
  const auto layers = layer_solids(block(),
                                   {{60 * millilitre, one_in_five(0)},
                                    {25 * millilitre, one_in_five(180)},
                                    {65 * millilitre, {}}},
                                   1, place);
  CHECK_THAT(layers[0].to / millimetre, WithinAbs(22, paper));
  CHECK_THAT(layers[1].from / millimetre, WithinAbs(2, paper));
  CHECK_THAT(layers[1].to / millimetre, WithinAbs(22, paper));
  CHECK_THAT(layers[2].from / millimetre, WithinAbs(12, paper));
  CHECK_THAT(layers[2].to / millimetre, WithinAbs(30, paper));
  CHECK_THAT(ml_of(layers[1]), WithinAbs(25, paper));
  REQUIRE((layers[0].surface && layers[1].surface));
  CHECK_FALSE(layers[2].surface);
  CHECK_THAT(layers[0].surface->over_origin / millimetre, WithinAbs(2, paper));
  CHECK_THAT(layers[0].surface->rise_x, WithinAbs(0.2, 1e-9));
  CHECK_THAT(layers[1].surface->over_origin / millimetre, WithinAbs(22, paper));
  CHECK_THAT(layers[1].surface->rise_x, WithinAbs(-0.2, 1e-9));
  CHECK_THAT(layers[1].surface->rise_y, WithinAbs(0, 1e-9));
}

TEST_CASE("a level layer may lie below a tilted one", "[planning]") {
  // 10 mm level are 50 ml; over them a wedge that wets the whole layer: 20 mm x 100 mm / 2 = 50 ml.
  const auto layers = layer_solids(
      block(), {{50 * millilitre, {}}, {50 * millilitre, one_in_five(180)}, {50 * millilitre, {}}},
      1, place);
  CHECK_THAT(layers[1].from / millimetre, WithinAbs(10, paper));
  CHECK_THAT(layers[1].to / millimetre, WithinAbs(30, paper));
  CHECK_THAT(layers[2].to / millimetre, WithinAbs(30, paper));
}

TEST_CASE("a tilted pour that cannot be is refused", "[planning]") {
  struct Row {
    geometry::TriangleMesh cavity;
    std::vector<LayerPour> layers;
    std::string field, said;
  };
  const Volume rest = 10 * millilitre;
  const auto row = GENERATE_COPY(values<Row>({
      // Propped one in five the block's 200 ml lose a wedge of 20 x 100 / 2 x 50: 150 ml are most.
      {block(),
       {{151 * millilitre, one_in_five(0)}, {rest, {}}},
       "/pour/layers/0",
       "is 151 ml, which spills over the low brim of a mould tilted by 11.31°; pour at most 150 "
       "ml"},
      // Propped to +y the block holds 100 x 50 x (40 + 30) / 2: 175 ml, of which 40 ml are taken.
      {block(),
       {{40 * millilitre, {}}, {136 * millilitre, one_in_five(90)}, {rest, {}}},
       "/pour/layers/1",
       "pour at most 135 ml, or tilt the mould less"},
      // 60 ml slope from 22 to 2 mm; 40 ml over them stand at h, (h - 2)^2 / 0.4 x 50 mm3 = 40 ml.
      {block(),
       {{60 * millilitre, one_in_five(0)}, {40 * millilitre, {}}},
       "/pour/layers/0",
       "stands 22 mm up the low wall, above the last layer's surface at 19.9 mm"},
      {two_wells(),
       {{30 * millilitre, tilt(5, 90)}, {rest, {}}},
       "/pour/layers/0",
       "lies in 2 pools"},
      {block(), {{250 * millilitre, {}}, {rest, {}}}, "/pour/layers/0", "pour at most 200 ml"},
      {block(), {{200 * millilitre, {}}, {rest, {}}}, "/pour/layers/1", "pour at most 0 ml"},
      {block(), {{Volume{}, {}}, {rest, {}}}, "/pour/layers/0", "holds nothing"},
      {block(), {{rest, tilt(95)}}, "/pour/layers/0", "is 95°, which is not a tilt"},
  }));
  CAPTURE(row.said);
  try {
    layer_solids(row.cavity, row.layers, 1, place);
    FAIL("was not refused");
  } catch (const UserError& error) {
    CHECK(error.parts().field == row.field);
    CHECK_THAT(std::string(error.what()), Contains(row.said));
  }
}

TEST_CASE("a pour that runs over a ridge between two wells is one pool", "[planning]") {
  // 100 ml level would stand 18.67 mm over the ridge; tilted by 5 degrees still above all of it.
  const auto layers =
      layer_solids(two_wells(), {{100 * millilitre, tilt(5, 90)}, {20 * millilitre, {}}}, 1, place);
  CHECK_THAT(ml_of(layers[0]), WithinAbs(100, paper));
}

TEST_CASE("layers, level or tilted, make up the pour", "[planning][law]") {
  rc::prop("each holds its volume, is closed, and together they are the fill", [] {
    const auto cavity = *rc::gen::arbitrary<bool>()
                            ? test::turned({{*rc::gen::inRange(15, 40) * 1.0, 0}, {45, 60}}, 16)
                            : test::obelisk(*rc::gen::inRange(60, 120) * 1.0, 60, 120, 80, 60);
    const Volume whole = enclosed_volume(cavity);
    std::vector<LayerPour> pours;
    Volume poured;
    for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
      pours.push_back({*rc::gen::inRange(5, 20) * 0.01 * whole,
                       tilt(*rc::gen::inRange(0, 8) * 1.0, *rc::gen::inRange(0, 24) * 15.0)});
      poured += pours.back().volume;
    }
    pours.push_back({0.95 * whole - poured, {}});
    const auto layers = layer_solids(cavity, pours, 1, place);
    Volume sum;
    for (std::size_t i = 0; i < layers.size(); ++i) {
      const auto solid = geometry::checked_solid(layers[i].solid, "the layer").solid;
      const Volume volume = enclosed_volume(solid);
      RC_ASSERT(abs(volume - pours[i].volume) < 1e-9 * whole);
      sum += volume;
    }
    RC_ASSERT(abs(sum - 0.95 * whole) < 1e-9 * whole);
    const Length line = geometry::LevelCurve::of_solid(cavity).depth_at(0.95 * whole);
    RC_ASSERT(abs(layers.back().to - line) < 1e-6 * millimetre);
  });
}

TEST_CASE("a run's tilted first layer by depth stands so far up the low wall", "[planning]") {
  const Run run = block_run({{"low", LayerDepth{22 * millimetre}, {}, one_in_five(0)},
                             {"middle", LayerDepth{5 * millimetre}, {}},
                             {"high", LayerRest{}, {}}});
  const auto layers = layers_to_30_mm(run);
  CHECK_THAT(layers[0].volume_each / millilitre, WithinAbs(60, paper));  // 22 and 2 mm high
  CHECK_THAT(layers[0].to / millimetre, WithinAbs(22, paper));
  CHECK_THAT(layers[1].volume_each / millilitre, WithinAbs(27 * 5 - 60, paper));  // level at 27
  CHECK_THAT(layers[1].from / millimetre, WithinAbs(2, paper));
  CHECK_THAT(layers[1].to / millimetre, WithinAbs(27, paper));
  CHECK_THAT(layers[2].volume_each / millilitre, WithinAbs(15, paper));
  CHECK(layers[2].to == 30 * millimetre);
  CHECK(layers[0].tilted.has_value());
  CHECK_FALSE(layers[1].tilted.has_value());
}

TEST_CASE("propping a mould moves no batter from layer to layer", "[planning]") {
  const auto run = [](std::optional<geometry::Tilt> tilted) {
    return block_run({{"low", LayerParts{2}, {}, tilted}, {"high", LayerParts{3}, {}}});
  };
  const auto level = layers_to_30_mm(run({}));
  const auto sloping = layers_to_30_mm(run(one_in_five(270)));
  CHECK(sloping[0].volume_each == level[0].volume_each);  // 60 ml
  // Along the 50 mm of y the surface falls 10 mm, about 12.
  CHECK_THAT(sloping[0].to / millimetre, WithinAbs(17, paper));
  CHECK_THAT(sloping[1].from / millimetre, WithinAbs(7, paper));
}

TEST_CASE("runs with tilted layers that leave something open are refused", "[planning]") {
  struct Row {
    std::vector<Layer> layers;
    std::string said;
  };
  const auto row = GENERATE_COPY(values<Row>({
      {{{"a", LayerParts{1}, {}}, {"b", LayerParts{1}, {}, tilt(5)}}, "/pour/layers/1/tilted"},
      {{{"a", LayerDepth{5 * millimetre}, {}},
        {"b", LayerDepth{5 * millimetre}, {}, tilt(5)},
        {"c", LayerRest{}, {}}},
       "give the layers as mass or as parts"},
      {{{"a", LayerParts{9}, {}, tilt(8)}, {"b", LayerParts{1}, {}}}, "up the low wall"},
  }));
  CHECK_THROWS_WITH(layers_to_30_mm(block_run(row.layers)), Contains(row.said));
}

TEST_CASE("a sloping pour's bars each get their share of every layer", "[planning]") {
  const Run run =
      block_run({{"low", LayerParts{2}, {}, one_in_five(0)}, {"high", LayerParts{3}, {}}});
  const auto tallies = layers_to_30_mm(run);
  const PouredCavity poured =
      poured_cavity(run, moulds::solid_of(run.pour.mould), 30 * millimetre, tallies);
  CHECK_THAT(poured.holding, WithinAbs(1, 1e-12));
  std::vector<geometry::TriangleMesh> solids;
  for (const auto& layer : poured.layers) solids.push_back(layer.solid);
  const Cut wire{.bar = Slices{20 * millimetre}, .kerf = Length{}};
  const CutTally cut = cut_of(wire, solids, poured.holding, {"loaf.run.json", "/cut"});
  REQUIRE(cut.bars.size() == 5);
  std::vector<Volume> sums(2);
  for (std::size_t i = 0; i < 5; ++i) {
    // 20 x 50 mm by the slope's height in the middle of the bar: 4, 8, 12, 16, 20 mm.
    const double height = 4.0 * static_cast<double>(i + 1);
    CHECK_THAT(cut.bars[i].layers[0] / millilitre, WithinAbs(height, paper));
    for (std::size_t layer = 0; layer < 2; ++layer) sums[layer] += cut.bars[i].layers[layer];
  }
  CHECK_THAT(sums[0] / millilitre, WithinAbs(tallies[0].volume_each / millilitre, paper));
  CHECK_THAT(sums[1] / millilitre, WithinAbs(tallies[1].volume_each / millilitre, paper));
}

TEST_CASE("a plain pour is one layer up to the line", "[planning]") {
  const Run run = block_run({});
  const PouredCavity poured =
      poured_cavity(run, moulds::solid_of(run.pour.mould), 30 * millimetre, {});
  REQUIRE(poured.layers.size() == 1);
  CHECK_THAT(ml_of(poured.layers[0]), WithinAbs(150, paper));
}
