#include "geometry/packing/packing_energy.h"

#include <algorithm>

namespace brimwright::geometry {

PackingSlope::PackingSlope(const Arrangement& arrangement, double reach_mm,
                           std::vector<double>& slope)
    : arrangement_(arrangement), reach_(reach_mm), slope_(slope) {
  slope_.assign(6 * arrangement.poses.size(), 0);
}

void PackingSlope::add(std::size_t body, const Vector& point_mm, const Vector& growth) {
  const Vector arm = point_mm - arrangement_.poses[body].at_mm;
  const Vector twist = cross(arm, growth) * (1 / reach_);
  double* own = slope_.data() + 6 * body;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    own[axis] += growth[axis];
    own[3 + axis] += twist[axis];
  }
}

void PackingSlope::keep_to_rules() {
  if (!arrangement_.level.empty()) keep_levels();
  if (!arrangement_.keeps_turns) return;
  for (std::size_t i = 0; i < slope_.size(); ++i)
    if (i % 6 >= 3) slope_[i] = 0;
}

void PackingSlope::keep_levels() {
  const std::vector<std::size_t>& level = arrangement_.level;
  // A level may be empty, so there can be more of them than bodies.
  const std::size_t levels = *std::max_element(level.begin(), level.end()) + 1;
  std::vector<double> rise(levels, 0), bodies(levels, 0);
  for (std::size_t body = 0; body < level.size(); ++body) {
    rise[level[body]] += slope_[6 * body + 2];
    bodies[level[body]] += 1;
  }
  for (std::size_t body = 0; body < level.size(); ++body) {
    double* own = slope_.data() + 6 * body;
    own[2] = rise[level[body]] / bodies[level[body]];
    own[3] = own[4] = 0;
  }
}

PackingEnergy::PackingEnergy(const PackingModel& model, std::size_t points)
    : model_(model), points_(std::min(points, model.probes.size())) {
  const auto balls = std::count_if(model.probes.begin(),
                                   model.probes.begin() + static_cast<std::ptrdiff_t>(points_),
                                   [](const Probe& probe) { return probe.radius_mm > 0; });
  const double all = static_cast<double>(points_), some = static_cast<double>(balls);
  if (balls > 0) ball_weight_ = std::max(1.0, (all - some) / (2 * some));
}

// Where bodies lie deep in each other, points on the far side pull them together. The balls must
// weigh more than they.
double PackingEnergy::weight(std::size_t probe) const {
  return model_.probes[probe].radius_mm > 0 ? ball_weight_ : 1;
}

Shortfall PackingEnergy::at(const Arrangement& arrangement, std::vector<double>& slope) {
  const std::vector<Pose>& poses = arrangement.poses;
  PackingSlope sums(arrangement, model_.reach_mm, slope);
  sum_ = {};
  surface_.resize(poses.size() * points_);
  for (std::size_t body = 0; body < poses.size(); ++body) against_wall(poses[body], body, sums);
  for (std::size_t i = 0; i < poses.size(); ++i) {
    for (std::size_t j = i + 1; j < poses.size(); ++j) {
      if (!model_.may_meet(poses[i], poses[j])) continue;
      against_body(poses, i, j, sums);
      against_body(poses, j, i, sums);
    }
  }
  sums.keep_to_rules();
  return sum_;
}

void PackingEnergy::count(double shortfall, double weight) {
  sum_.energy_mm2 += weight * shortfall * shortfall;
  sum_.worst_mm = std::max(sum_.worst_mm, shortfall);
}

void PackingEnergy::against_wall(const Pose& pose, std::size_t body, PackingSlope& slope) {
  Vector* surface = &surface_[body * points_];
  for (std::size_t i = 0; i < points_; ++i) {
    surface[i] = pose.at_mm + turned(model_.probes[i].at_mm, pose.turn);
    const DistanceField::Reading wall = model_.wall.at(surface[i]);
    const double shortfall = wall.distance_mm + model_.probes[i].radius_mm + model_.cover_mm;
    if (shortfall <= 0) continue;
    count(shortfall, weight(i));
    slope.add(body, surface[i], wall.slope * (2 * weight(i) * shortfall));
  }
  readings_ += points_;
}

void PackingEnergy::against_body(const std::vector<Pose>& poses, std::size_t of, std::size_t other,
                                 PackingSlope& slope) {
  const Pose& there = poses[other];
  readings_ += points_;
  for (std::size_t i = 0; i < points_; ++i) {
    const Vector& point = surface_[of * points_ + i];
    const Vector seen = turned_back(point - there.at_mm, there.turn);
    if (!model_.skin.covers(seen)) continue;  // farther than any ball needs
    const DistanceField::Reading skin = model_.skin.at(seen);
    const double shortfall = model_.apart_mm + model_.probes[i].radius_mm - skin.distance_mm;
    if (shortfall <= 0) continue;
    count(shortfall, weight(i));
    const Vector growth = turned(skin.slope, there.turn) * (-2 * weight(i) * shortfall);
    slope.add(of, point, growth);
    slope.add(other, point, growth * -1);
  }
}

}  // namespace brimwright::geometry
