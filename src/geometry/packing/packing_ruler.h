#pragma once

#include "geometry/packing/packing_model.h"
#include "geometry/packing/packing_proof.h"

#include <vector>

namespace brimwright::geometry {

/// Measures gaps for building lattices: by the model, quickly and with some tolerance, or by the
/// surfaces, exactly.
class PackingRuler {
 public:
  explicit PackingRuler(const PackingModel& model) : model_(model) {}
  PackingRuler(const PackingModel& model, const PackingProof& proof)
      : model_(model), proof_(&proof) {}

  bool is_exact() const { return proof_ != nullptr; }
  /// By the model, a place that is short of its cover by less than the model can tell is clear.
  bool is_clear_of_wall(const Pose& pose) const;

  /// The body moved from `start` against `direction` (a unit vector) until it is just as far from
  /// one of the others as asked. `start` must be far enough from them.
  Pose slid_to_bodies(Pose start, const Vector& direction, const std::vector<Pose>& others) const;
  /// The body moved along `direction` until it would be nearer the wall than allowed.
  Pose slid_to_wall(const Pose& start, const Vector& direction) const;

 private:
  double close_enough_mm() const;
  // By the surfaces only where the model does not show, for all its errors, `enough` of a gap.
  double body_gap_mm(const Pose& a, const Pose& b, double enough) const;

  const PackingModel& model_;
  const PackingProof* proof_ = nullptr;
};

}  // namespace brimwright::geometry
