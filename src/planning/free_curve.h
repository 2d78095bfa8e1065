#pragma once

#include "geometry/levels/level_curve.h"
#include "units/quantity.h"

#include <vector>

namespace brimwright::planning {

/// A solid that takes up room in a cavity: what of it lies below a level, and where it starts.
struct Submerged {
  geometry::LevelCurve curve;
  Length bottom;  // its lowest point above the cavity's
};

/// What batter a cavity has room for round embeds that lie in it: V(depth) less what of the embeds
/// is below that depth.
class FreeCurve {
 public:
  explicit FreeCurve(geometry::LevelCurve cavity, std::vector<Submerged> embeds = {});

  Volume displaced_below(Length depth) const;
  Volume volume_below(Length depth) const;
  Area free_surface(Length depth) const;
  /// The depth that leaves room for `volume`, to 1e-12 of the cavity's height; the nearest end for
  /// volumes outside what it holds.
  Length depth_at(Volume volume) const;

 private:
  geometry::LevelCurve cavity_;
  std::vector<Submerged> embeds_;
};

}  // namespace brimwright::planning
