#pragma once

namespace brimwright::geometry {

/// Volume below a plane and the free surface there: the curve's value and its slope.
struct Level {
  double volume_mm3 = 0;
  double surface_mm2 = 0;
};

/// A stretch of depths in which a curve reaches a wanted volume.
struct DepthRange {
  double low_mm = 0;
  double high_mm = 0;
};

}  // namespace brimwright::geometry
