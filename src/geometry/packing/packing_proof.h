#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_pose.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// Says by the surfaces themselves whether bodies lie as asked.
class PackingProof {
 public:
  explicit PackingProof(const PackingModel& model);

  bool is_in_hollow(const Pose& pose) const;  // with its cover
  bool are_apart(const Pose& a, const Pose& b) const;

  /// From surface to surface, also for a body that is on the wrong side; 0 where they cross.
  Gap wall_gap(const Pose& pose) const;
  Gap body_gap(const Pose& a, const Pose& b) const;

  /// Whether every body lies in the hollow and apart from all others.
  bool is_kept_by(const std::vector<Pose>& poses) const;
  /// Then the packing, for the body as it was given.
  std::optional<Packing> proved(const std::vector<Pose>& poses) const;

 private:
  bool is_inside(const Pose& pose) const;
  bool is_outside(const Pose& a, const Pose& b) const;
  void lessen(Length& least, const SurfaceTree& surface, const Placement& at,
              const Pose& pose) const;  // to the gap between it and the body there

  const PackingModel& model_;
  std::vector<Vector> hollow_shells_, body_shells_;  // a point of each
};

}  // namespace brimwright::geometry
