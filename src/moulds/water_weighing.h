#pragma once

#include "geometry/levels/level_curve.h"
#include "units/fields.h"
#include "units/quantity.h"
#include "units/share.h"
#include "units/temperature.h"

#include <optional>
#include <vector>

namespace brimwright::moulds {

/// What one fills with water and weighs.
enum class Filled { each_cavity, all_cavities };

/// Where the water stood.
struct WaterLine {
  enum class From { brim, floor };
  From from = From::brim;
  Length distance;  // below the brim, or above the lowest point
};

/// Water weighed in a mould, one or more rounds of the same filling.
struct WaterWeighing {
  Temperature temperature;
  WaterLine line;
  Filled filled = Filled::each_cavity;
  std::vector<Mass> rounds;  // at least one
  Place place;               // of the object "water", for complaints
  Place line_place = {};     // of the line in it

  /// Mean of the rounds for one cavity, by the density of water (Kell 1975). Weighing in air reads
  /// 0.1 % low, far less than one can fill to a line by eye, and is not corrected.
  Volume volume_each(int cavities) const;
  /// (largest - smallest) / mean; nothing for a single round.
  std::optional<Share> spread() const;
  /// The line's depth above the lowest point; UserError if it lies outside the cavity.
  Length depth_in(const geometry::LevelCurve& curve) const;
};

/// Reads the object under "water" of a mould file.
WaterWeighing read_water(const Fields& fields);

}  // namespace brimwright::moulds
