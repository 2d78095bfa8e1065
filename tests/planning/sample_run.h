#pragma once

#include "chemistry/formula.h"
#include "moulds/shape.h"
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
          .remarks = {}};
}

/// One fat with the supplier's value 190, pure NaOH, water twice the alkali, 1 g/ml by measurement.
inline chemistry::Formula paper_formula(const std::string& superfat = "5 %") {
  return chemistry::read_formula(Fields::parse(R"({
    "schema": "brimwright.formula/1", "name": "Paper base",
    "fats": [ { "fat": "olive", "share": "100 %", "saponification_value": 190 } ],
    "superfat": ")" + superfat + R"(",
    "alkali": [ { "alkali": "NaOH", "saponifies": "100 %", "purity": "100 %" } ],
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
          .pour = {.mould = paper_mould(6, 2),
                   .formula = paper_formula(),
                   .line = BelowBrim{2 * millimetre},
                   .layers = {},
                   .losses = {2 * percent, 20 * gram, 10 * gram, 60 * gram}},
          .pipe = {},
          .perch = {},
          .dust = {},
          .scales = {.large = {1 * gram, 5 * kilogram}, .fine = {0.1 * gram, 500 * gram}},
          .money = {}};
}

inline Pipe paper_pipe() {
  return {.formula = paper_formula(),
          .visible = PipedTrials{{30 * gram, 34 * gram}, {100 * millilitre, 64 * gram}},
          .fills_headspace = 50 * percent,
          .whip = {100 * millilitre, 80 * gram},
          .whip_now = {},
          .bag_holds = 500 * millilitre,
          .losses = {30 * gram, 20 * gram}};
}

}  // namespace brimwright::planning
