#pragma once

#include "geometry/levels/level.h"
#include "geometry/levels/level_band.h"

#include <vector>

namespace brimwright::geometry {

/// A level curve put together from slices known in closed form.
class BandCurve {
 public:
  /// The bands must start at zero and follow each other upwards without a gap.
  explicit BandCurve(std::vector<LevelBand> bands);

  double height_mm() const { return bands_.back().top / millimetre; }
  double brimful_mm3() const { return start_.back() / cubic_millimetre; }
  /// At a depth from 0 to the height; the surface just above it, but at the brim just below it.
  Level at(double depth) const;
  std::vector<Level> at(const std::vector<double>& depths) const;
  /// The band that holds `volume`, from 0 to brimful.
  DepthRange around(double volume) const;

 private:
  std::vector<LevelBand> bands_;
  std::vector<Volume> start_;  // volume below each band, and below the brim
};

}  // namespace brimwright::geometry
