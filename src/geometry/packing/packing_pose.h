#pragma once

#include "geometry/distance/placement.h"
#include "geometry/surface/vectors.h"

#include <array>
#include <cstdint>
#include <random>

namespace brimwright::geometry {

using Turn = std::array<Point, 3>;  // rows; a rotation

/// Where a body's centre is, and how the body is turned about it.
struct Pose {
  Vector at_mm = {0, 0, 0};
  Turn turn = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
};

inline Vector turned(const Vector& v, const Turn& turn) {
  return {dot(turn[0], v), dot(turn[1], v), dot(turn[2], v)};
}
inline Vector turned_back(const Vector& v, const Turn& turn) {
  return turn[0] * v[0] + turn[1] * v[1] + turn[2] * v[2];
}
Turn product(const Turn& first_applied_last, const Turn& first_applied);
/// By the length of `axis`, in radians, round it (Rodrigues' formula).
Turn turn_about(const Vector& axis);

/// Of a body whose centre is the origin.
inline Placement placement_of(const Pose& pose) {
  return {.turn = pose.turn, .move_mm = pose.at_mm};
}

/// Throws that are the same everywhere: the generator's sequence is fixed by the standard, those of
/// the standard's distributions are not.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : bits_(seed) {}
  double share();                        // from 0 up to 1
  std::size_t below(std::size_t count);  // one of 0 to count - 1
  Vector in_box(const Vector& low, const Vector& high);
  Turn turn();  // any rotation, all alike likely (Shoemake 1992, "Uniform random rotations")

 private:
  std::mt19937_64 bits_;
};

}  // namespace brimwright::geometry
