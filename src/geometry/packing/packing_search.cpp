#include "geometry/packing/packing_search.h"

#include "geometry/packing/packing_lattice.h"
#include "geometry/packing/packing_relaxation.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace brimwright::geometry {
namespace {

constexpr int trials_for_one = 24, trials_for_more = 60;
constexpr std::size_t glance = 16;  // points enough to compare one place with another

std::size_t levels_of(const Arrangement& arrangement) {
  std::size_t levels = 1;
  for (const std::size_t level : arrangement.level) levels = std::max(levels, level + 1);
  return levels;
}

}  // namespace

std::optional<Arrangement> PackingSearch::one() {
  for (const Turn& turn : even_turns(model_.lying)) {
    if (const auto pose = placed_once(model_, proof_, turn, work_)) {
      Arrangement found{.poses = {*pose}};
      if (model_.lying != Lying::free) found.level = {0};
      return found;
    }
  }
  for (int trial = 0; trial < trials_for_one && !work_.is_over(); ++trial)
    if (const auto found = settled(model_, proof_, thrown_in(1, 1), work_)) return found;
  return {};
}

std::optional<Arrangement> PackingSearch::one_more_than(const Arrangement& found) {
  const std::size_t bodies = found.poses.size() + 1;
  for (int trial = 0; trial < trials_for_more && !work_.is_over(); ++trial) {
    const std::size_t levels = levels_of(found) + dice_.below(2);
    Arrangement start = trial % 3 == 0 ? shaken(found) : thrown_in(bodies, levels);
    if (const auto more = settled(model_, proof_, std::move(start), work_)) return more;
  }
  return {};
}

Arrangement PackingSearch::thrown_in(std::size_t bodies, std::size_t levels) {
  Arrangement thrown;
  const Turn common = any_turn();
  const bool is_alike = dice_.below(2) == 0;
  const int tries = 1 + static_cast<int>(dice_.below(12));
  while (thrown.poses.size() < bodies)
    add_roomiest(thrown, levels, is_alike ? &common : nullptr, tries);
  make_level(thrown);
  return thrown;
}

Arrangement PackingSearch::shaken(const Arrangement& found) {
  Arrangement shaken = found;
  const double far = dice_.share() * model_.skin.depth_mm();
  for (Pose& pose : shaken.poses)
    pose.at_mm = pose.at_mm + dice_.in_box({-far, -far, -far}, {far, far, far});
  add_roomiest(shaken, levels_of(found), nullptr, 100);
  make_level(shaken);
  return shaken;
}

void PackingSearch::add_roomiest(Arrangement& arrangement, std::size_t levels, const Turn* turn,
                                 int tries) {
  Pose best;
  double most = -std::numeric_limits<double>::infinity();
  for (int i = 0; i < tries; ++i) {
    const Pose pose = anywhere(turn);
    const double room = room_mm(arrangement, pose);
    if (room > most) most = room, best = pose;
  }
  work_.done +=
      static_cast<double>(tries) * glance * static_cast<double>(1 + 2 * arrangement.poses.size());
  arrangement.poses.push_back(best);
  if (model_.lying == Lying::level) arrangement.level.push_back(0);
  if (model_.lying == Lying::layered) arrangement.level.push_back(dice_.below(levels));
}

Pose PackingSearch::anywhere(const Turn* turn) {
  Pose pose{.turn = turn ? *turn : any_turn()};
  for (int i = 0; i < 50; ++i) {
    pose.at_mm = dice_.in_box(model_.wall.low_mm(), model_.wall.high_mm());
    if (-model_.wall.at(pose.at_mm).distance_mm >=
        std::min(model_.cover_mm, model_.wall.depth_mm()))
      break;
  }
  return pose;
}

Turn PackingSearch::any_turn() {
  if (dice_.below(2) == 0) {
    const std::vector<Turn> even = even_turns(model_.lying);
    return even[dice_.below(even.size())];
  }
  return model_.lying == Lying::free ? dice_.turn() : turn_about({0, 0, 2 * pi * dice_.share()});
}

double PackingSearch::room_mm(const Arrangement& arrangement, const Pose& pose) const {
  double room = model_.wall_gap_mm(pose, glance) - model_.cover_mm;
  for (const Pose& other : arrangement.poses) {
    if (length(other.at_mm - pose.at_mm) - 2 * model_.reach_mm > room + model_.apart_mm) continue;
    room = std::min(room, model_.body_gap_mm(pose, other, glance) - model_.apart_mm);
  }
  return room;
}

void PackingSearch::make_level(Arrangement& arrangement) {
  const std::size_t levels = levels_of(arrangement);
  std::vector<double> height(levels, 0), bodies(levels, 0);
  for (std::size_t i = 0; i < arrangement.level.size(); ++i) {
    height[arrangement.level[i]] += arrangement.poses[i].at_mm[2];
    bodies[arrangement.level[i]] += 1;
  }
  for (std::size_t i = 0; i < arrangement.level.size(); ++i) {
    const std::size_t level = arrangement.level[i];
    arrangement.poses[i].at_mm[2] = height[level] / bodies[level];
  }
}

}  // namespace brimwright::geometry
