#include "units/rounding.h"

#include <algorithm>
#include <cmath>

namespace brimwright {
namespace {

constexpr double slack =
    1e-9;  // far above the noise of a few dozen operations, far below any scale

bool is_as_good_as(double value, double whole_number) {
  return std::abs(value - whole_number) <= slack * std::max(1.0, std::abs(value));
}

}  // namespace

std::int64_t whole_up(double value) {
  const double nearest = std::round(value);
  return static_cast<std::int64_t>(is_as_good_as(value, nearest) ? nearest : std::ceil(value));
}

std::int64_t whole_down(double value) {
  const double nearest = std::round(value);
  return static_cast<std::int64_t>(is_as_good_as(value, nearest) ? nearest : std::floor(value));
}

std::int64_t whole_nearest(double value) {
  // A half that noise left a hair short of itself still counts as a half.
  const double nudged = value + std::copysign(slack * std::max(1.0, std::abs(value)), value);
  return static_cast<std::int64_t>(std::round(nudged));
}

Mass rounded_up(Mass mass, Mass step) { return double(whole_up(mass / step)) * step; }
Mass rounded_down(Mass mass, Mass step) { return double(whole_down(mass / step)) * step; }
Mass rounded_nearest(Mass mass, Mass step) { return double(whole_nearest(mass / step)) * step; }

}  // namespace brimwright
