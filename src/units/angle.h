#pragma once

#include <compare>
#include <numbers>

namespace brimwright {

/// A plane angle, radians inside.
class Angle {
 public:
  constexpr Angle() = default;
  static constexpr Angle in_radians(double radians) {
    Angle a;
    a.radians_ = radians;
    return a;
  }
  static constexpr Angle in_degrees(double degrees) {
    return in_radians(degrees * std::numbers::pi / 180);
  }
  constexpr double radians() const { return radians_; }
  constexpr double degrees() const { return radians_ * 180 / std::numbers::pi; }
  constexpr auto operator<=>(const Angle&) const = default;

 private:
  double radians_ = 0;
};

}  // namespace brimwright
