#include "geometry/packing/packing_ruler.h"

#include <algorithm>
#include <limits>

namespace brimwright::geometry {
namespace {

// Each slide goes as far as the gap allows whatever the direction, so none ever goes too far. Flat
// against flat it is done in one; ball past ball needs some.
constexpr int slides = 16;

}  // namespace

double PackingRuler::body_gap_mm(const Pose& a, const Pose& b, double enough) const {
  const double read = model_.body_gap_mm(a, b, PackingModel::few);
  if (!proof_) return read;
  const double sure = read - 2 * model_.skin.step_mm();
  return sure > enough ? sure : proof_->body_gap(a, b).width / millimetre;
}

// Flat against flat a slide ends exactly; what is round need not be followed to the last.
double PackingRuler::close_enough_mm() const {
  return std::max(model_.hair_mm / 10, 1e-5 * model_.skin.depth_mm());
}

bool PackingRuler::is_clear_of_wall(const Pose& pose) const {
  const double tolerance = model_.wall.step_mm() / 2;
  const double need = model_.cover_mm - tolerance;
  const double depth = std::max(0.0, -model_.skin.at({0, 0, 0}).distance_mm);
  if (-model_.wall.at(pose.at_mm).distance_mm < need + depth - model_.skin.step_mm()) return false;
  for (std::size_t i = 0; i < std::min(PackingModel::few, model_.probes.size()); ++i) {
    const Vector point = pose.at_mm + turned(model_.probes[i].at_mm, pose.turn);
    if (-model_.wall.at(point).distance_mm - model_.probes[i].radius_mm < need) return false;
  }
  return !proof_ || proof_->is_in_hollow(pose);
}

Pose PackingRuler::slid_to_bodies(Pose start, const Vector& direction,
                                  const std::vector<Pose>& others) const {
  const double aim = model_.apart_mm + model_.hair_mm / 2;  // or rounding would decide
  for (int slide = 0; slide < slides; ++slide) {
    double spare = std::numeric_limits<double>::infinity();
    const double enough = aim + model_.skin.step_mm();
    for (const Pose& other : others) {
      const double at_least = length(start.at_mm - other.at_mm) - 2 * model_.reach_mm;
      if (at_least - aim < spare) spare = std::min(spare, body_gap_mm(start, other, enough) - aim);
    }
    if (spare < close_enough_mm()) break;
    start.at_mm = start.at_mm - direction * spare;
  }
  return start;
}

Pose PackingRuler::slid_to_wall(const Pose& start, const Vector& direction) const {
  const auto slid = [&](double way) {
    return Pose{.at_mm = start.at_mm + direction * way, .turn = start.turn};
  };
  double clear = 0, not_clear = length(model_.wall.high_mm() - model_.wall.low_mm());
  if (proof_) {
    const double read =
        length(PackingRuler(model_).slid_to_wall(start, direction).at_mm - start.at_mm);
    not_clear = read + model_.wall.step_mm();
    for (double back = 0; clear == 0 && back < 4; ++back) {
      const double way = std::max(0.0, read - back * model_.wall.step_mm());
      (is_clear_of_wall(slid(way)) ? clear : not_clear) = way;
    }
  }
  for (int halving = 0; halving < (proof_ ? 8 : 24); ++halving) {
    const double way = (clear + not_clear) / 2;
    (is_clear_of_wall(slid(way)) ? clear : not_clear) = way;
  }
  return slid(clear);
}

}  // namespace brimwright::geometry
