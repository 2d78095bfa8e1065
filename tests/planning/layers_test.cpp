#include "planning/layers.h"

#include "moulds/shape_curve.h"
#include "planning/plan.h"
#include "sample_run.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace brimwright;
using namespace brimwright::planning;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

/// Layers of a run with nothing buried.
std::vector<LayerTally> layers_to(const Run& run, Length line, Density batter) {
  return layers_of(run, cavity_of(run), FreeCurve(run.pour.mould.curve), line, batter);
}

Run run_with(std::vector<Layer> layers) {
  Run run = paper_run();
  run.pour.layers = std::move(layers);
  return run;
}

const Density plain = 1 * gram_per_millilitre;

}  // namespace

TEST_CASE("equal parts of a tapered cup are equal volumes, not equal depths", "[planning]") {
  Run run = run_with({{"low", LayerParts{1}, {}}, {"high", LayerParts{1}, {}}});
  const moulds::Frustum cone{0.001 * millimetre, 60 * millimetre, 30 * millimetre};
  run.pour.mould.curve = moulds::level_curve(cone);
  const auto layers = layers_to(run, 30 * millimetre, plain);
  CHECK(layers[0].volume_each / layers[1].volume_each == Approx(1));
  // A cone is half full at the cube root of one half of its height: 30 x 0.793701 = 23.811 mm.
  CHECK_THAT(layers[0].to / millimetre, WithinAbs(23.811, 0.002));
}

TEST_CASE("layers by depth or by mass end at the pour line", "[planning]") {
  // 100 x 50 mm: a millimetre is 5 ml; the line is 18 mm up.
  const auto by_depth =
      layers_to(run_with({{"low", LayerDepth{8 * millimetre}, {}}, {"high", LayerRest{}, {}}}),
                18 * millimetre, plain);
  CHECK_THAT(by_depth[0].volume_each / millilitre, WithinAbs(40, 1e-9));
  CHECK_THAT(by_depth[1].volume_each / millilitre, WithinAbs(50, 1e-9));
  const auto by_mass =
      layers_to(run_with({{"low", LayerMass{60 * gram}, {}}, {"high", LayerMass{30 * gram}, {}}}),
                18 * millimetre, plain);
  CHECK_THAT(by_mass[0].to / millimetre, WithinAbs(12, 1e-9));
}

TEST_CASE("layers that do not add up are refused with the figure", "[planning]") {
  struct Row {
    std::vector<Layer> layers;
    std::string said;
  };
  const auto row = GENERATE(values<Row>({
      {{{"a", LayerDepth{8 * millimetre}, {}}}, "the layers take 8 mm of 18 mm"},
      {{{"a", LayerMass{95 * gram}, {}}, {"b", LayerRest{}, {}}}, "leaves nothing for the rest"},
      {{{"a", LayerMass{9 * gram}, {}}, {"b", LayerParts{1}, {}}}, "given in different ways"},
      {{{"a", LayerRest{}, {}}, {"b", LayerRest{}, {}}}, "two layers take the rest"},
      {{{"a", LayerParts{1}, {}}, {"b", LayerRest{}, {}}}, "parts leave no rest"},
  }));
  CHECK_THROWS_WITH(layers_to(run_with(row.layers), 18 * millimetre, plain), Contains(row.said));
}

TEST_CASE("a layer that other layers leave no thickness is refused, not drawn", "[planning]") {
  const double huge = 1e13, endless = 1e308;
  struct Row {
    std::vector<Layer> layers;
    std::string place;
  };
  const auto row = GENERATE_COPY(values<Row>({
      {{{"a", LayerParts{huge}, {}}, {"b", LayerParts{1}, {}}}, "/pour/layers/1/parts"},
      {{{"a", LayerParts{1}, {}}, {"b", LayerParts{huge}, {}}}, "/pour/layers/0/parts"},
      {{{"a", LayerParts{endless}, {}}, {"b", LayerParts{endless}, {}}}, "/pour/layers/0/parts"},
      {{{"a", LayerDepth{0.05 * millimetre}, {}}, {"b", LayerRest{}, {}}}, "/pour/layers/0/depth"},
      {{{"a", LayerMass{89.99 * gram}, {}}, {"b", LayerRest{}, {}}}, "/pour/layers/1/rest"},
  }));
  CHECK_THROWS_WITH(planning::plan(run_with(row.layers)),
                    Contains(row.place + ": leaves this layer thinner than 0.1 mm") &&
                        Contains("leave the layer out"));
}

TEST_CASE("a pour line next to the floor fills nothing, and is refused before it is cut or drawn",
          "[planning]") {
  Run run = run_with({});
  const double depth_mm = GENERATE(1e-18, 1e-6, 0.09);
  run.pour.line = FromFloor{depth_mm * millimetre};
  CHECK_THROWS_WITH(planning::plan(run), Contains("/pour/line: fills nothing"));
  run.cut = Cut{.bar = Slices{25 * millimetre}};
  CHECK_THROWS_WITH(planning::plan(run), Contains("/pour/line: fills nothing"));
}

TEST_CASE("jugs hold what goes into the pieces and their residue, and never more than there is",
          "[planning][law]") {
  rc::prop("jugs sum to pieces, overpour and residue; volumes to the pour", [] {
    std::vector<Layer> layers;
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i)
      layers.push_back({"layer", LayerParts{double(*rc::gen::inRange(1, 10))}, {}});
    const Plan plan = planning::plan(run_with(layers));
    Mass mass;
    Volume volume;
    for (const auto& layer : plan.pour.layers) {
      mass += layer.mass;
      volume += layer.volume_each;
    }
    // 2 % overpour, 10 g in the jugs; 20 g in the pot and 60 g of test piece never reach one.
    const Mass asked = 1.02 * plan.pour.batter.in_pieces + 10 * gram;
    RC_ASSERT(mass <= asked + 1e-9 * asked);
    RC_ASSERT(mass > asked - 1 * gram);
    RC_ASSERT(mass + 80 * gram <= plan.pour.batter.weighing.batter + 1e-9 * asked);
    RC_ASSERT(abs(volume - plan.pour.batter.volume_each) < 1e-9 * volume);
  });
}

TEST_CASE("a layer's colour is dosed on that layer alone", "[planning]") {
  const LayerColour clay{"rose clay", Rate{2 * percent, RateBasis::batter}, {}};
  const Plan plan =
      planning::plan(run_with({{"low", LayerParts{1}, {clay}}, {"high", LayerParts{2}, {}}}));
  const auto& low = plan.pour.layers.front();
  REQUIRE(low.colours.size() == 1);
  // A third of 4320 g in the pieces with 2 % overpour, 1468.8 g, and half of the jugs' 10 g: on a
  // 1 g scale 1473 g, 2 % of that 29.46 g: 29.5 on 0.1 g.
  CHECK(low.mass / gram == Approx(1473));
  CHECK(low.colours.front().weighed / gram == Approx(29.5));
}
