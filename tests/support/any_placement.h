#pragma once

// Random places for laws; to be called within a property only.

#include "geometry/distance/placement.h"

#include <rapidcheck.h>

namespace brimwright::geometry::test {

inline double between(double low, double high) {
  constexpr int steps = 1'000'000;
  return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

inline Vector any_point(double reach) {
  return {between(-reach, reach), between(-reach, reach), between(-reach, reach)};
}

/// Turned any way and moved by up to `reach` along each axis.
inline Placement any_placement(double reach) {
  const auto any_angle = [] { return Angle::in_degrees(between(-180, 180)); };
  const Angle x = any_angle(), y = any_angle(), z = any_angle();
  return {turned_about_axes(x, y, z), any_point(reach)};
}

/// `later` after `earlier`.
inline Placement combined(const Placement& later, const Placement& earlier) {
  Placement both{.move_mm = placed(earlier.move_mm, later)};
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = 0; j < 3; ++j) {
      both.turn[i][j] = 0;
      for (std::size_t k = 0; k < 3; ++k) both.turn[i][j] += later.turn[i][k] * earlier.turn[k][j];
    }
  }
  return both;
}

}  // namespace brimwright::geometry::test
