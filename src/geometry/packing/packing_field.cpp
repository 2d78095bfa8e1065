#include "geometry/packing/packing_field.h"

#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>

namespace brimwright::geometry {

DistanceField::DistanceField(const SurfaceTree& solid, double margin_mm, std::size_t points)
    : margin_(margin_mm) {
  const Box box = bounding_box(solid.solid());
  const Vector margin = {margin_mm, margin_mm, margin_mm};
  const Vector size = box.high_mm - box.low_mm + margin * 2;
  // At least four cells across the thinnest side, however long the others are.
  const double even = std::cbrt(size[0] * size[1] * size[2] / static_cast<double>(points));
  step_ = std::min(even, *std::min_element(size.begin(), size.end()) / 4);
  step_ = std::max(step_, even / 2);
  low_ = box.low_mm - margin;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    count_[axis] =
        std::max<std::size_t>(2, static_cast<std::size_t>(std::ceil(size[axis] / step_)) + 1);
    high_[axis] = low_[axis] + step_ * static_cast<double>(count_[axis] - 1);
  }
  values_.resize(count_[0] * count_[1] * count_[2]);
  for (std::size_t i = 0; i < values_.size(); ++i) {
    const double distance = solid.signed_distance_mm(grid_point(i));
    if (i == 0 || -distance > depth_) depth_ = -distance, deepest_ = grid_point(i);
    values_[i] = static_cast<float>(distance);
  }
}

Vector DistanceField::grid_point(std::size_t index) const {
  const std::size_t row = count_[0], slice = count_[0] * count_[1];
  return low_ + Vector{static_cast<double>(index % row), static_cast<double>(index % slice / row),
                       static_cast<double>(index / slice)} *
                    step_;
}

std::vector<Probe> DistanceField::inner_points() const {
  std::vector<Probe> points;
  for (std::size_t i = 0; i < values_.size(); ++i)
    if (values_[i] < 0) points.push_back({grid_point(i), -double{values_[i]}});
  return points;
}

bool DistanceField::covers(const Vector& p) const {
  return p[0] >= low_[0] && p[0] <= high_[0] && p[1] >= low_[1] && p[1] <= high_[1] &&
         p[2] >= low_[2] && p[2] <= high_[2];
}

double DistanceField::at_least_mm(const Vector& point_mm) const {
  if (covers(point_mm)) return inside_grid(point_mm).distance_mm;
  Vector away = {0, 0, 0};
  for (std::size_t axis = 0; axis < 3; ++axis) {
    const double p = point_mm[axis];
    away[axis] = p - std::clamp(p, low_[axis], high_[axis]);
  }
  return margin_ + length(away);
}

DistanceField::Reading DistanceField::at(const Vector& point_mm) const {
  if (covers(point_mm)) return inside_grid(point_mm);
  Vector nearest;
  for (std::size_t axis = 0; axis < 3; ++axis)
    nearest[axis] = std::clamp(point_mm[axis], low_[axis], high_[axis]);
  const Vector away = point_mm - nearest;
  const double beyond = length(away);
  return {inside_grid(nearest).distance_mm + beyond, away * (1 / beyond)};
}

DistanceField::Reading DistanceField::inside_grid(const Vector& point_mm) const {
  std::array<std::size_t, 3> cell;
  Vector t;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    const double along = (point_mm[axis] - low_[axis]) / step_;
    cell[axis] = std::min(count_[axis] - 2, static_cast<std::size_t>(along));
    t[axis] = along - static_cast<double>(cell[axis]);
  }
  const std::size_t row = count_[0], slice = count_[0] * count_[1];
  const float* v = values_.data() + cell[0] + row * cell[1] + slice * cell[2];
  const auto edge = [&](std::size_t from) {
    return std::array<double, 2>{double{v[from]}, double{v[from + 1]} - double{v[from]}};
  };
  const auto e00 = edge(0), e10 = edge(row), e01 = edge(slice), e11 = edge(row + slice);
  const auto mix = [](double a, double b, double share) { return a + (b - a) * share; };
  const double f00 = e00[0] + e00[1] * t[0], f10 = e10[0] + e10[1] * t[0];
  const double f01 = e01[0] + e01[1] * t[0], f11 = e11[0] + e11[1] * t[0];
  const double below = mix(f00, f10, t[1]), above = mix(f01, f11, t[1]);
  const double along_x = mix(mix(e00[1], e10[1], t[1]), mix(e01[1], e11[1], t[1]), t[2]);
  const double along_y = mix(f10 - f00, f11 - f01, t[2]);
  return {mix(below, above, t[2]), Vector{along_x, along_y, above - below} * (1 / step_)};
}

}  // namespace brimwright::geometry
