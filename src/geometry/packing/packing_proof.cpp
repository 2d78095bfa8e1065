#include "geometry/packing/packing_proof.h"

#include "geometry/packing/packing_shape.h"

#include <algorithm>
#include <limits>

namespace brimwright::geometry {
namespace {

constexpr Length none = std::numeric_limits<double>::infinity() * millimetre;

}  // namespace

PackingProof::PackingProof(const PackingModel& model)
    : model_(model),
      hollow_shells_(shell_points(model.hollow.solid())),
      body_shells_(shell_points(model.body.solid())) {}

// Where surfaces do not meet, one point of a shell tells on which side all of it lies.
bool PackingProof::is_inside(const Pose& pose) const {
  return std::all_of(body_shells_.begin(), body_shells_.end(),
                     [&](const Vector& point) {
                       return model_.hollow.contains(placed(point, placement_of(pose)));
                     }) &&
         std::none_of(hollow_shells_.begin(), hollow_shells_.end(), [&](const Vector& point) {
           return model_.body.contains(turned_back(point - pose.at_mm, pose.turn));
         });
}

bool PackingProof::is_outside(const Pose& a, const Pose& b) const {
  return std::none_of(body_shells_.begin(), body_shells_.end(), [&](const Vector& point) {
    const Vector seen = placed(point, placement_of(a)) - b.at_mm;
    return model_.body.contains(turned_back(seen, b.turn));
  });
}

bool PackingProof::is_in_hollow(const Pose& pose) const {
  return is_inside(pose) && is_gap_at_least(model_.cover_mm * millimetre, model_.hollow, {},
                                            model_.body, placement_of(pose));
}

bool PackingProof::are_apart(const Pose& a, const Pose& b) const {
  if (!model_.may_meet(a, b)) return true;
  return is_gap_at_least(model_.apart_mm * millimetre, model_.body, placement_of(a), model_.body,
                         placement_of(b)) &&
         is_outside(a, b) && is_outside(b, a);
}

Gap PackingProof::wall_gap(const Pose& pose) const {
  return gap_between(model_.hollow, {}, model_.body, placement_of(pose));
}

Gap PackingProof::body_gap(const Pose& a, const Pose& b) const {
  return gap_between(model_.body, placement_of(a), model_.body, placement_of(b));
}

bool PackingProof::is_kept_by(const std::vector<Pose>& poses) const {
  for (std::size_t i = 0; i < poses.size(); ++i) {
    if (!is_in_hollow(poses[i])) return false;
    for (std::size_t j = 0; j < i; ++j)
      if (!are_apart(poses[i], poses[j])) return false;
  }
  return true;
}

std::optional<Packing> PackingProof::proved(const std::vector<Pose>& poses) const {
  if (!is_kept_by(poses)) return {};
  Packing packing;
  Length least_cover = none, least_apart = none;
  for (std::size_t i = 0; i < poses.size(); ++i) {
    const Vector move = poses[i].at_mm - turned(model_.centre_mm, poses[i].turn);
    packing.places.push_back({.turn = poses[i].turn, .move_mm = move});
    lessen(least_cover, model_.hollow, {}, poses[i]);
    for (std::size_t j = 0; j < i; ++j) {
      // Balls round two bodies are no farther apart than the bodies.
      const double between = length(poses[i].at_mm - poses[j].at_mm) - 2 * model_.reach_mm;
      if (between * millimetre < least_apart)
        lessen(least_apart, model_.body, placement_of(poses[j]), poses[i]);
    }
  }
  packing.least_cover = poses.empty() ? Length{} : least_cover;
  packing.least_apart = poses.size() < 2 ? Length{} : least_apart;
  return packing;
}

void PackingProof::lessen(Length& least, const SurfaceTree& surface, const Placement& at,
                          const Pose& pose) const {
  const Placement here = placement_of(pose);
  if (least < none && is_gap_at_least(least, surface, at, model_.body, here)) return;
  least = std::min(least, gap_between(surface, at, model_.body, here).width);
}

}  // namespace brimwright::geometry
