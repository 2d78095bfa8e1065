#pragma once

#include "chemistry/formula.h"
#include "chemistry/formula_file.h"
#include "moulds/shape.h"
#include "moulds/shape_curve.h"
#include "planning/run.h"
#include "units/fields.h"

#include <string>

namespace brimwright::planning {

/// A cavity whose numbers can be worked on paper: 100 x 50 x 20 mm, upright walls, 100 ml brimful.
inline moulds::Mould paper_mould(int cavities, int owned) {
  return {.file = "paper_mould.json",
          .name = "Paper block",
          .description = "",
          .note = "",
          .cavities = cavities,
          .owned = owned,
          .unmould_after = {},
          .curve = moulds::level_curve(
              moulds::Block{100 * millimetre, 50 * millimetre, 20 * millimetre, Angle{}, Length{}}),
          .measurements = {},
          .remarks = {},
          .shape =
              moulds::Block{100 * millimetre, 50 * millimetre, 20 * millimetre, Angle{}, Length{}}};
}

/// One fat with the supplier's value 190, pure NaOH, water twice the alkali, 1 g/ml by measurement.
inline chemistry::Formula paper_formula(const std::string& superfat = "5 %") {
  return chemistry::read_formula(Fields::parse(R"({
    "schema": "brimwright.formula/2", "name": "Paper base",
    "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
    "superfat": ")" + superfat + R"(",
    "alkali": [ { "alkali": "NaOH", "share": "100 %", "purity": "100 %" } ],
    "water": { "water_to_alkali": 2 },
    "pour_temperature": "35 °C",
    "measured_density": "1 g/ml",
    "water_lost_in_cure": "50 %" })",
                                               "paper_base.formula.json"));
}

inline Run paper_run() {
  return {.file = "paper.run.json",
          .name = "Paper run",
          .sell = 46,
          .spoilage = 4 * percent,
          .pour = {.mould = paper_mould(6, 8),  // room for all 48: one batch
                   .formula = paper_formula(),
                   .line = BelowBrim{2 * millimetre},
                   .layers = {},
                   .losses = {2 * percent, 20 * gram, 10 * gram, 60 * gram}},
          .pipe = {},
          .decorations = {},
          .cut = {},
          .dust = {},
          .scales = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}},
          .money = {}};
}

inline Pipe paper_pipe() {
  return {.formula = paper_formula(),
          .trials = PipedTrials{{30 * gram, 34 * gram}, {100 * millilitre, 64 * gram}},
          .fills_headspace = 50 * percent,
          .whip = {100 * millilitre, 80 * gram},
          .whip_now = {},
          .bag_holds = 500 * millilitre,
          .losses = {30 * gram, 20 * gram}};
}

/// A mould of blocks `length` x `width` x `height` in millimetres.
inline moulds::Mould block_mould(double length, double width, double height) {
  moulds::Mould mould = paper_mould(10, 1);
  mould.shape = moulds::Block{length * millimetre, width * millimetre, height * millimetre, Angle{},
                              Length{}};
  mould.curve = moulds::level_curve(*mould.shape);
  return mould;
}

/// A brick 20 x 20 x 10 mm of 1.03 g/ml, one in each piece.
inline Decoration paper_brick() {
  return {.name = "Brick",
          .material = "clear base",
          .made = InMould{block_mould(20, 20, 10), BelowBrim{Length{}}},
          .density = 1.03 * gram_per_millilitre,
          .spares = {},
          .melt_loss = {},
          .left_in_jug = {}};
}

/// A ball 20 mm across, cast as two halves.
inline Decoration paper_ball() {
  Decoration ball = paper_brick();
  ball.name = "Ball";
  moulds::Mould half = block_mould(20, 20, 10);
  half.shape = moulds::HalfBall{20 * millimetre};
  half.curve = moulds::level_curve(*half.shape);
  ball.made = InMould{half, BelowBrim{Length{}}, CastForm::two_halves};
  return ball;
}

}  // namespace brimwright::planning
