#include "geometry/packing/packing_relaxation.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <numeric>
#include <utility>

namespace brimwright::geometry {
namespace {

using Numbers = std::vector<double>;

double dot(const Numbers& a, const Numbers& b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}
void add(Numbers& to, const Numbers& what, double factor) {
  for (std::size_t i = 0; i < to.size(); ++i) to[i] += factor * what[i];
}

Arrangement stepped(const Arrangement& from, const Numbers& step, double share, double reach_mm) {
  Arrangement to = from;
  for (std::size_t body = 0; body < to.poses.size(); ++body) {
    const double* own = step.data() + 6 * body;
    Pose& pose = to.poses[body];
    pose.at_mm = pose.at_mm + Vector{own[0], own[1], own[2]} * share;
    const Vector twist = {own[3], own[4], own[5]};
    pose.turn = product(turn_about(twist * (share / reach_mm)), pose.turn);
  }
  return to;
}

/// The last few steps and what they changed in the slope: L-BFGS's picture of the curvature.
class Curvature {
 public:
  void learn(Numbers step, Numbers change) {
    const double product = dot(step, change);
    if (product <= 1e-12 * std::sqrt(dot(step, step) * dot(change, change))) return;
    if (steps_.size() == 6) steps_.pop_front();
    steps_.push_back({std::move(step), std::move(change), product});
  }
  void forget() { steps_.clear(); }
  bool is_empty() const { return steps_.empty(); }

  /// Down the slope, as far as the curvature seen suggests.
  Numbers way_down(const Numbers& slope) const {
    Numbers way = slope, shares(steps_.size());
    for (std::size_t i = steps_.size(); i-- > 0;) {
      shares[i] = dot(steps_[i].step, way) / steps_[i].product;
      add(way, steps_[i].change, -shares[i]);
    }
    // Each point's shortfall squared has the curvature 2, and many points share one push.
    const double scale =
        steps_.empty() ? 0.1
                       : steps_.back().product / dot(steps_.back().change, steps_.back().change);
    for (double& number : way) number *= -scale;
    for (std::size_t i = 0; i < steps_.size(); ++i) {
      const double share = dot(steps_[i].change, way) / steps_[i].product;
      add(way, steps_[i].step, -shares[i] - share);
    }
    return way;
  }

 private:
  struct Step {
    Numbers step, change;
    double product;
  };
  std::deque<Step> steps_;
};

/// No body moves farther than a quarter of its reach at once: beyond, the slope tells nothing.
void shorten(Numbers& way, double reach_mm) {
  double largest = 0;
  for (const double number : way) largest = std::max(largest, std::abs(number));
  const double most = reach_mm / 4;
  if (largest > most)
    for (double& number : way) number *= most / largest;
}

}  // namespace

Relaxed relaxed(const ShortfallOf& shortfall, Arrangement arrangement, double reach_mm,
                std::size_t rounds) {
  Curvature curvature;
  Numbers slope, next_slope;
  Shortfall now = shortfall(arrangement, slope);
  double lately = now.energy_mm2;
  for (std::size_t round = 0; round < rounds && now.worst_mm > 0; ++round) {
    if (round % 10 == 9) {
      if (now.energy_mm2 > 0.97 * lately) break;  // it has come to rest with bodies still too near
      lately = now.energy_mm2;
    }
    Numbers way = curvature.way_down(slope);
    shorten(way, reach_mm);
    const double fall = dot(way, slope);
    double share = 1;
    Arrangement next;
    Shortfall then;
    for (int cut = 0; cut < 12; ++cut, share /= 3) {
      next = stepped(arrangement, way, share, reach_mm);
      then = shortfall(next, next_slope);
      if (then.energy_mm2 <= now.energy_mm2 + 1e-4 * share * fall) break;
    }
    if (!(then.energy_mm2 < now.energy_mm2)) {
      if (curvature.is_empty()) break;
      curvature.forget();
      continue;
    }
    Numbers change = next_slope;
    add(change, slope, -1);
    for (double& number : way) number *= share;
    curvature.learn(std::move(way), std::move(change));
    arrangement = std::move(next);
    std::swap(slope, next_slope);
    now = then;
  }
  return {std::move(arrangement), now.worst_mm};
}

}  // namespace brimwright::geometry
