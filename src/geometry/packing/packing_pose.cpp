#include "geometry/packing/packing_pose.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace brimwright::geometry {

Turn product(const Turn& first_applied_last, const Turn& first_applied) {
  Turn all;
  for (std::size_t row = 0; row < 3; ++row)
    all[row] = turned_back(first_applied_last[row], first_applied);
  return all;
}

Turn turn_about(const Vector& axis) {
  const double angle = length(axis);
  if (angle < 1e-300) return Pose{}.turn;
  const Vector u = axis * (1 / angle);
  const double c = std::cos(angle), s = std::sin(angle);
  Turn turn;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) turn[i][j] = (1 - c) * u[i] * u[j] + (i == j ? c : 0);
  turn[0][1] -= s * u[2], turn[1][0] += s * u[2];
  turn[0][2] += s * u[1], turn[2][0] -= s * u[1];
  turn[1][2] -= s * u[0], turn[2][1] += s * u[0];
  return turn;
}

double Dice::share() { return static_cast<double>(bits_() >> 11) * 0x1p-53; }

std::size_t Dice::below(std::size_t count) {
  return std::min(count - 1, static_cast<std::size_t>(share() * static_cast<double>(count)));
}

Vector Dice::in_box(const Vector& low, const Vector& high) {
  Vector point;
  for (std::size_t axis = 0; axis < 3; ++axis)
    point[axis] = low[axis] + share() * (high[axis] - low[axis]);
  return point;
}

Turn Dice::turn() {
  const double u = share(), a = 2 * std::numbers::pi * share(), b = 2 * std::numbers::pi * share();
  const double x = std::sqrt(1 - u) * std::sin(a), y = std::sqrt(1 - u) * std::cos(a);
  const double z = std::sqrt(u) * std::sin(b), w = std::sqrt(u) * std::cos(b);
  return {{{1 - 2 * (y * y + z * z), 2 * (x * y - z * w), 2 * (x * z + y * w)},
           {2 * (x * y + z * w), 1 - 2 * (x * x + z * z), 2 * (y * z - x * w)},
           {2 * (x * z - y * w), 2 * (y * z + x * w), 1 - 2 * (x * x + y * y)}}};
}

}  // namespace brimwright::geometry
