#include "geometry/packing/packing_contacts.h"

#include <algorithm>

namespace brimwright::geometry {
namespace {

/// A point of a body as seen from the wall, which does not move, or from another body.
Vector seen_from(const std::vector<Pose>& poses, std::size_t other, const Vector& point_mm) {
  if (other == Contact::wall) return point_mm;
  return turned_back(point_mm - poses[other].at_mm, poses[other].turn);
}

double clearance_at(const PackingModel& model, std::size_t other, const Vector& seen) {
  return other == Contact::wall ? -model.hollow.signed_distance_mm(seen)
                                : model.body.signed_distance_mm(seen);
}

double asked_of(const PackingModel& model, std::size_t other) {
  return other == Contact::wall ? model.cover_mm : model.apart_mm;
}

Vector slope_at(const PackingModel& model, std::size_t other, const Vector& seen, double here) {
  const double step = 1e-4 * model.skin.depth_mm();
  Vector slope;
  for (std::size_t axis = 0; axis < 3; ++axis) {
    Vector beside = seen;
    beside[axis] += step;
    slope[axis] = (clearance_at(model, other, beside) - here) / step;
  }
  const double steepness = length(slope);
  return steepness > 0 ? slope * (1 / steepness) : slope;
}

}  // namespace

Shortfall ContactEnergy::at(const Arrangement& arrangement, std::vector<double>& slope) const {
  const std::vector<Pose>& poses = arrangement.poses;
  PackingSlope sums(arrangement, model_.reach_mm, slope);
  Shortfall sum;
  for (const Contact& contact : contacts_) {
    const Pose& pose = poses[contact.body];
    const Vector point = pose.at_mm + turned(contact.point_mm, pose.turn);
    const Vector moved = seen_from(poses, contact.other, point) - contact.measured_at_mm;
    const double distance = contact.distance_mm + dot(contact.slope, moved);
    const double shortfall = asked_of(model_, contact.other) + spare_ - distance;
    if (shortfall <= 0) continue;
    sum.energy_mm2 += shortfall * shortfall;
    sum.worst_mm = std::max(sum.worst_mm, shortfall);
    const bool is_wall = contact.other == Contact::wall;
    const Vector way = is_wall ? contact.slope : turned(contact.slope, poses[contact.other].turn);
    sums.add(contact.body, point, way * (-2 * shortfall));
    if (!is_wall) sums.add(contact.other, point, way * (2 * shortfall));
  }
  sums.keep_to_rules();
  return sum;
}

void ContactSurvey::measure(const Arrangement& arrangement) {
  const std::vector<Pose>& poses = arrangement.poses;
  contacts_.clear();
  is_met_ = true;
  unseen_.resize(poses.size() * (poses.size() + 1), 0);
  for (std::size_t i = 0; i < poses.size(); ++i) {
    add_nearest(poses, i, Contact::wall, add_points(poses, i, Contact::wall));
    for (std::size_t j = 0; j < i; ++j) {
      if (!model_.may_meet(poses[i], poses[j])) continue;
      const double least = std::min(add_points(poses, i, j), add_points(poses, j, i));
      add_nearest(poses, i, j, least);
    }
  }
  contacts_.insert(contacts_.end(), nearest_.begin(), nearest_.end());
}

double ContactSurvey::add_points(const std::vector<Pose>& poses, std::size_t body,
                                 std::size_t other) {
  const bool is_wall = other == Contact::wall;
  const DistanceField& field = is_wall ? model_.wall : model_.skin;
  const double near = asked_of(model_, other) + 0.1 * model_.skin.depth_mm();
  double least = far;
  for (const Probe& probe : model_.probes) {
    const Vector at = poses[body].at_mm + turned(probe.at_mm, poses[body].turn);
    const Vector seen = seen_from(poses, other, at);
    const double read = is_wall ? -field.at(seen).distance_mm : field.at_least_mm(seen);
    if (read - probe.radius_mm > near + field.step_mm() / 2) continue;
    const double clear = clearance_at(model_, other, seen), measured = clear - probe.radius_mm;
    ++points_;
    least = std::min(least, measured);
    if (measured > near) continue;
    contacts_.push_back(
        {body, other, probe.at_mm, slope_at(model_, other, seen, clear), measured, seen});
  }
  return least;
}

bool ContactSurvey::is_far_enough(const std::vector<Pose>& poses, std::size_t body,
                                  std::size_t other) const {
  return other == Contact::wall ? proof_.is_in_hollow(poses[body])
                                : proof_.are_apart(poses[other], poses[body]);
}

void ContactSurvey::add_nearest(const std::vector<Pose>& poses, std::size_t body, std::size_t other,
                                double least) {
  const double asked = asked_of(model_, other);
  if (least == far) return;
  ++surfaces_;
  const bool is_wall = other == Contact::wall;
  if (least >= asked && is_far_enough(poses, body, other)) return;
  const Gap gap = least <= 0 ? Gap{}
                  : is_wall  ? proof_.wall_gap(poses[body])
                             : proof_.body_gap(poses[other], poses[body]);
  const double measured = gap.width / millimetre;
  is_met_ = false;
  if (measured <= 0) {
    if (least >= asked) take_nearer(body, other, poses.size());
    return;
  }
  const Vector way = (gap.on_second_mm - gap.on_first_mm) * (1 / measured);
  const Pose& pose = poses[body];
  nearest_.push_back({body, other, turned_back(gap.on_second_mm - pose.at_mm, pose.turn),
                      is_wall ? way : turned_back(way, poses[other].turn), measured,
                      seen_from(poses, other, gap.on_second_mm)});
}

// Surfaces that cross between the points measured have no gap to tell by how much: the points are
// taken to be nearer than they are, more each time, until the surfaces come free.
void ContactSurvey::take_nearer(std::size_t body, std::size_t other, std::size_t bodies) {
  const std::size_t pair = body * (bodies + 1) + (other == Contact::wall ? bodies : other);
  const double by = 2e-3 * model_.skin.depth_mm() * ++unseen_[pair];
  for (Contact& contact : contacts_) {
    const bool is_this = (contact.body == body && contact.other == other) ||
                         (contact.body == other && contact.other == body);
    if (is_this) contact.distance_mm -= by;
  }
}

}  // namespace brimwright::geometry
