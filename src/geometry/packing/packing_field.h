#pragma once

#include "geometry/distance/surface_tree.h"
#include "geometry/surface/vectors.h"

#include <array>
#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// A ball that a body holds; of radius 0, a point of its surface.
struct Probe {
  Vector at_mm;
  double radius_mm;
};

/// Signed distance to a surface, negative inside, kept on a grid: a guide for a search, not proof.
///
/// Between grid points it is interpolated, which is exact beside flat walls and rounds off what is
/// sharper than the grid's step.
class DistanceField {
 public:
  /// Over the solid's box and `margin_mm` round it, in about `points` grid points.
  DistanceField(const SurfaceTree& solid, double margin_mm, std::size_t points);

  struct Reading {
    double distance_mm;
    Vector slope;
  };
  /// Beyond the grid: at its nearest point, plus the way to that.
  Reading at(const Vector& point_mm) const;
  bool covers(const Vector& point_mm) const;
  /// No more than the distance; beyond the grid, the way to it and the margin round the solid.
  double at_least_mm(const Vector& point_mm) const;

  /// The grid points inside, as balls up to the surface.
  std::vector<Probe> inner_points() const;

  double step_mm() const { return step_; }
  const Vector& low_mm() const { return low_; }
  const Vector& high_mm() const { return high_; }
  /// The grid point deepest inside, and how deep.
  const Vector& deepest_mm() const { return deepest_; }
  double depth_mm() const { return depth_; }

 private:
  Vector grid_point(std::size_t index) const;
  Reading inside_grid(const Vector& point_mm) const;

  Vector low_, high_, deepest_ = {0, 0, 0};
  double step_ = 1, depth_ = 0, margin_ = 0;
  std::array<std::size_t, 3> count_;
  std::vector<float> values_;
};

}  // namespace brimwright::geometry
