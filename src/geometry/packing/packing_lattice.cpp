#include "geometry/packing/packing_lattice.h"

#include "geometry/packing/packing_relaxation.h"
#include "geometry/packing/packing_ruler.h"
#include "geometry/surface/enclosed_volume.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::geometry {
namespace {

/// How a lattice is built, before its pitches are known.
struct LatticePlan {
  Turn turn;
  std::array<std::size_t, 3> axes;  // along the row, to the next row, to the next layer
  double row_shift;                 // of the next row along its own, in pitches
  std::array<double, 2> layer_shift;
};

struct Lattice {
  LatticePlan plan;
  bool has_layers;
  Vector row = {}, next_row = {}, next_layer = {};
};

/// Where a lattice starts: from one body that fits, moved by shares of the lattice's steps, or as
/// far into a corner as that goes.
struct LatticeStart {
  int rise;  // first: not at all, 1 as high as it goes, -1 as low
  bool in_corner;
  Vector shares;
};

/// A lattice with the bodies that it places.
struct Filled {
  LatticePlan plan;
  LatticeStart start;
  Pose once;
  Arrangement arrangement;
};

Vector along(std::size_t axis) {
  Vector unit = {0, 0, 0};
  unit[axis] = 1;
  return unit;
}

class LatticeBuilder {
 public:
  LatticeBuilder(const PackingModel& model, const PackingRuler& ruler)
      : model_(model), ruler_(ruler) {}

  Lattice built(const LatticePlan& plan) const {
    Lattice lattice{.plan = plan, .has_layers = model_.lying != Lying::level};
    const double row = pitch(plan, plan.axes[0]), beside = pitch(plan, plan.axes[1]);
    lattice.row = along(plan.axes[0]) * row;
    lattice.next_row = stacked(plan, lattice.row * plan.row_shift, plan.axes[1], beside,
                               round({lattice.row}, plan));
    if (!lattice.has_layers) return lattice;
    const Vector shift = lattice.row * plan.layer_shift[0] + lattice.next_row * plan.layer_shift[1];
    lattice.next_layer = stacked(plan, shift, plan.axes[2], pitch(plan, plan.axes[2]),
                                 round({lattice.row, lattice.next_row}, plan));
    return lattice;
  }

 private:
  double far() const { return 2 * model_.reach_mm + model_.apart_mm + model_.hair_mm; }

  double pitch(const LatticePlan& plan, std::size_t axis) const {
    const Pose start{.at_mm = along(axis) * far(), .turn = plan.turn};
    return ruler_.slid_to_bodies(start, along(axis), {{.turn = plan.turn}}).at_mm[axis];
  }

  /// All sums of each step taken back, not at all, once or twice.
  static std::vector<Pose> round(const std::vector<Vector>& steps, const LatticePlan& plan) {
    std::vector<Pose> poses = {{.turn = plan.turn}};
    for (const Vector& step : steps) {
      const std::vector<Pose> before = std::exchange(poses, {});
      for (const Pose& pose : before) {
        for (int times = -1; times <= 2; ++times)
          poses.push_back({.at_mm = pose.at_mm + step * times, .turn = plan.turn});
      }
    }
    return poses;
  }

  /// The step, by `shift` and along `axis`, to the next row or layer. Never under half the pitch of
  /// bodies straight beside each other, or the row after the next would run into this one.
  Vector stacked(const LatticePlan& plan, const Vector& shift, std::size_t axis, double straight,
                 const std::vector<Pose>& others) const {
    const Pose start{.at_mm = shift + along(axis) * far(), .turn = plan.turn};
    Vector step = ruler_.slid_to_bodies(start, along(axis), others).at_mm;
    step[axis] = std::max(step[axis], straight / 2);
    return step;
  }

  const PackingModel& model_;
  const PackingRuler& ruler_;
};

/// Bodies at all sites of a lattice through `origin` that are clear of the wall.
class SiteWalk {
 public:
  SiteWalk(const PackingModel& model, const PackingRuler& ruler, const Lattice& lattice,
           const Pose& origin, std::size_t most)
      : model_(model), ruler_(ruler), lattice_(lattice), origin_(origin), most_(most) {}

  Arrangement filled() {
    if (!lattice_.has_layers) {
      rows(origin_.at_mm, 0);
      return std::move(found_);
    }
    const auto [first, last] = span(origin_.at_mm, lattice_.next_layer, 2);
    for (int layer = first; layer <= last && !is_done(); ++layer)
      rows(origin_.at_mm + lattice_.next_layer * layer, static_cast<std::size_t>(layer - first));
    if (model_.lying == Lying::free) found_.level.clear();
    return std::move(found_);
  }

 private:
  void rows(const Vector& start, std::size_t layer) {
    const auto [first, last] = span(start, lattice_.next_row, 1);
    for (int row = first; row <= last && !is_done(); ++row)
      sites(start + lattice_.next_row * row, layer);
  }

  void sites(const Vector& start, std::size_t layer) {
    const auto [first, last] = span(start, lattice_.row, 0);
    for (int site = first; site <= last && !is_done(); ++site) {
      ++visited_;
      const Pose pose{.at_mm = start + lattice_.row * site, .turn = origin_.turn};
      if (!ruler_.is_clear_of_wall(pose)) continue;
      found_.poses.push_back(pose);
      found_.level.push_back(layer);
    }
  }

  // A hollow that has room for few bodies at so many sites is no place for a lattice.
  bool is_done() const { return found_.poses.size() >= most_ || visited_ > 20000; }

  /// How often `step` may be taken from `start` until the hollow ends, back and on.
  std::pair<int, int> span(const Vector& start, const Vector& step, std::size_t which) const {
    const std::size_t axis = lattice_.plan.axes[which];
    const double low = (model_.wall.low_mm()[axis] - start[axis]) / step[axis];
    const double high = (model_.wall.high_mm()[axis] - start[axis]) / step[axis];
    const double many = 300;  // enough for any number that a search looks for
    return {static_cast<int>(std::ceil(std::max(low, -many))),
            static_cast<int>(std::floor(std::min(high, many)))};
  }

  const PackingModel& model_;
  const PackingRuler& ruler_;
  const Lattice& lattice_;
  const Pose& origin_;
  std::size_t most_, visited_ = 0;
  Arrangement found_;
};

std::vector<LatticePlan> plans_for(const Turn& turn, Lying lying) {
  std::vector<std::array<std::size_t, 3>> orders = {{0, 1, 2}, {1, 0, 2}};
  if (lying == Lying::free)
    orders.insert(orders.end(), {{0, 2, 1}, {2, 0, 1}, {1, 2, 0}, {2, 1, 0}});
  std::vector<LatticePlan> plans;
  for (const auto& axes : orders) {
    plans.push_back({turn, axes, 0, {0, 0}});
    plans.push_back({turn, axes, 0.5, {0, 0}});
    if (lying == Lying::level) continue;
    plans.push_back({turn, axes, 0, {0.5, 0}});          // over the middle of two
    plans.push_back({turn, axes, 0, {0.5, 0.5}});        // of four
    plans.push_back({turn, axes, 0.5, {0.5, 1.0 / 3}});  // of three
  }
  return plans;
}

/// In the corner and round the middle. A single level has a height to choose: the hollow may be
/// wider above or below.
std::vector<LatticeStart> starts_for(Lying lying) {
  const bool is_level = lying == Lying::level;
  const int parts = is_level ? 4 : 2, layers = is_level ? 1 : 2;
  std::vector<LatticeStart> starts;
  for (const int rise : {0, 1, -1}) {
    if (rise != 0 && !is_level) break;
    starts.push_back({rise, true, {0, 0, 0}});
    for (int site = 0; site < parts * parts * layers; ++site) {
      const double row = site % parts, next = site / parts % parts, layer = site / parts / parts;
      starts.push_back({rise, false, {row / parts, next / parts, layer / layers}});
    }
  }
  return starts;
}

Pose started(const LatticeStart& start, const Lattice& lattice, Pose once,
             const PackingRuler& ruler) {
  if (start.rise != 0) once = ruler.slid_to_wall(once, {0, 0, double(start.rise)});
  for (int pass = 0; start.in_corner && pass < 2; ++pass) {
    for (const std::size_t axis : lattice.plan.axes) {
      if (axis == 2 && !lattice.has_layers) continue;
      once = ruler.slid_to_wall(once, along(axis) * -1);
    }
  }
  once.at_mm = once.at_mm + lattice.row * start.shares[0] + lattice.next_row * start.shares[1] +
               lattice.next_layer * start.shares[2];
  return once;
}

Filled best_start(const PackingModel& model, const PackingRuler& ruler, const LatticePlan& plan,
                  const Pose& once, std::size_t most) {
  const Lattice lattice = LatticeBuilder(model, ruler).built(plan);
  Filled best{plan, {}, once, {}};
  for (const LatticeStart& start : starts_for(model.lying)) {
    const Pose origin = started(start, lattice, once, ruler);
    Arrangement found = SiteWalk(model, ruler, lattice, origin, most).filled();
    if (found.poses.size() > best.arrangement.poses.size()) {
      best.arrangement = std::move(found);
      best.start = start;
    }
  }
  return best;
}

Arrangement single(const Pose& pose, Lying lying) {
  Arrangement one{.poses = {pose}};
  if (lying != Lying::free) one.level = {0};
  return one;
}

/// The lattice again, measured by the surfaces.
Arrangement exactly(const PackingModel& model, const PackingRuler& exact, const Filled& guess,
                    std::size_t most) {
  const Lattice lattice = LatticeBuilder(model, exact).built(guess.plan);
  const Pose origin = started(guess.start, lattice, guess.once, exact);
  return SiteWalk(model, exact, lattice, origin, most).filled();
}

/// Whether bodies lie at nearly the same places, however they are turned.
bool is_alike(const Arrangement& a, const Arrangement& b) {
  if (a.poses.size() != b.poses.size()) return false;
  if (a.poses.empty()) return true;
  const double near = 0.01 * length(a.poses.front().at_mm - a.poses.back().at_mm);
  return std::all_of(a.poses.begin(), a.poses.end(), [&](const Pose& pose) {
    return std::any_of(b.poses.begin(), b.poses.end(),
                       [&](const Pose& other) { return length(other.at_mm - pose.at_mm) <= near; });
  });
}

/// Those with most bodies, each kind once: a body that looks the same from several sides gives the
/// same lattice in several turns.
std::vector<Filled> best_guesses(std::vector<Filled> guesses) {
  constexpr std::size_t tried = 8;
  std::stable_sort(guesses.begin(), guesses.end(), [](const Filled& a, const Filled& b) {
    return a.arrangement.poses.size() > b.arrangement.poses.size();
  });
  std::vector<Filled> best;
  for (Filled& guess : guesses) {
    const bool is_new = std::none_of(best.begin(), best.end(), [&](const Filled& other) {
      return is_alike(guess.arrangement, other.arrangement);
    });
    if (is_new && best.size() < tried) best.push_back(std::move(guess));
  }
  return best;
}

}  // namespace

std::vector<Turn> even_turns(Lying lying) {
  std::vector<Turn> turns;
  for (const double quarter : {0.0, 1.0, 0.5, 1.5})
    turns.push_back(turn_about({0, 0, quarter * pi / 2}));
  if (lying != Lying::free) return turns;
  const Turn on_x = turn_about({pi / 2, 0, 0}), on_y = turn_about({0, pi / 2, 0});
  const Turn quarter = turns[1];
  for (const Turn& turn : {on_x, on_y, product(quarter, on_x), product(quarter, on_y)})
    turns.push_back(turn);
  return turns;
}

std::optional<Pose> placed_once(const PackingModel& model, const PackingProof& proof,
                                const Turn& turn, PackingWork& work) {
  const Box box = bounding_box(model.hollow.solid());
  const Vector middle = (box.low_mm + box.high_mm) * 0.5;
  for (const Vector& start : {middle, model.wall.deepest_mm()}) {
    const Pose pose{.at_mm = start, .turn = turn};
    work.done += exact_cost(model);
    if (model.wall_gap_mm(pose, PackingModel::few) > model.cover_mm - model.wall.step_mm() &&
        proof.is_in_hollow(pose)) {
      return pose;
    }
    Arrangement one = single(pose, model.lying);
    one.keeps_turns = true;
    Relaxed moved = relaxed_by_model(model, std::move(one), PackingModel::all, work);
    if (moved.worst_mm > 2 * model.wall.step_mm()) continue;
    if (const auto fits = repaired(model, proof, std::move(moved.arrangement), work))
      return fits->poses.front();
  }
  return {};
}

Arrangement best_lattice(const PackingModel& model, const PackingProof& proof, std::size_t most,
                         PackingWork& work) {
  const PackingRuler quick(model), exact(model, proof);
  std::vector<Filled> guesses;
  Arrangement best;
  for (const Turn& turn : even_turns(model.lying)) {
    const std::optional<Pose> once = placed_once(model, proof, turn, work);
    if (!once) continue;
    if (best.poses.empty()) best = single(*once, model.lying);
    for (const LatticePlan& plan : plans_for(turn, model.lying))
      guesses.push_back(best_start(model, quick, plan, *once, most));
  }
  for (const Filled& guess : best_guesses(std::move(guesses))) {
    const std::size_t sites = guess.arrangement.poses.size();
    if (sites <= best.poses.size()) break;
    Arrangement found = exactly(model, exact, guess, most);
    work.done += exact_cost(model) * 50;
    if (found.poses.size() > best.poses.size() && proof.is_kept_by(found.poses))
      best = std::move(found);
    if (sites <= best.poses.size()) continue;
    // What was a little too near the wall may come free when all give way a little.
    if (auto eased = settled(model, proof, guess.arrangement, work)) best = std::move(*eased);
  }
  return best;
}

}  // namespace brimwright::geometry
