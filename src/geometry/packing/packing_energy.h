#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_pose.h"

#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// How much an arrangement falls short of what is asked: the sum of squared shortfalls.
struct Shortfall {
  double energy_mm2 = 0;
  double worst_mm = 0;
};

/// How that sum falls when bodies move: for each body three numbers of its place, and three of its
/// turn about its centre, in radians times the body's reach.
class PackingSlope {
 public:
  PackingSlope(const Arrangement& arrangement, double reach_mm, std::vector<double>& slope);

  /// A point of `body`, where it lies, whose shortfall grows by `growth` for each millimetre it is
  /// moved along x, y, z.
  void add(std::size_t body, const Vector& point_mm, const Vector& growth);
  /// Leaves only what may move: upright bodies turn about the vertical alone, and all of a level
  /// rise together.
  void keep_to_rules();

 private:
  void keep_levels();

  const Arrangement& arrangement_;
  double reach_;
  std::vector<double>& slope_;
};

/// The shortfall of an arrangement by the model's distance fields, at `points` points of each
/// body's surface.
class PackingEnergy {
 public:
  PackingEnergy(const PackingModel& model, std::size_t points);

  Shortfall at(const Arrangement& arrangement, std::vector<double>& slope);
  std::size_t readings() const { return readings_; }  // of a field, so far: the work done

 private:
  void against_wall(const Pose& pose, std::size_t body, PackingSlope& slope);
  void against_body(const std::vector<Pose>& poses, std::size_t of, std::size_t other,
                    PackingSlope& slope);
  double weight(std::size_t probe) const;
  void count(double shortfall, double weight);

  const PackingModel& model_;
  std::size_t points_, readings_ = 0;
  double ball_weight_ = 1;
  Shortfall sum_;
  std::vector<Vector> surface_;  // of all bodies, body by body, where they lie
};

}  // namespace brimwright::geometry
