#include "geometry/beads/bead_path.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace brimwright::geometry {
namespace {

/// Walks through the moves, each starting where it says or where the one before it ended.
class Walk {
 public:
  explicit Walk(const SectionReach& reach) : reach_(reach), bead_height_(reach.below_mm) {}

  MoveStart start(const Dots& dots) { return standing({0, 0, 0}, dots.at_height); }
  MoveStart start(const Shells& shells) { return standing({0, 0, 0}, shells.at_height); }

  MoveStart start(const Dollop& dollop) {
    const MoveStart start = standing({0, 0, 0}, dollop.at_height);
    top_ = start.at_mm + Vector{0, 0, dollop.height / millimetre};
    return start;
  }

  MoveStart start(const Ring& ring) {
    const MoveStart start = lying({ring.radius / millimetre, 0, 0}, ring.at_height);
    end_bead(start.at_mm, 0);
    return start;
  }

  MoveStart start(const StraightBead& bead) {
    const double half = bead.length / millimetre / 2, aside = bead.aside / millimetre;
    const MoveStart start = lying({-half, aside, 0}, bead.at_height);
    end_bead({half, aside, start.at_mm[2]}, std::atan2(aside, half));
    return start;
  }

  MoveStart start(const ConicalSpiral& spiral) {
    const double angle = spiral.at_height ? 0 : bead_angle_;
    MoveStart start = lying(at(spiral.start_radius, angle), spiral.at_height);
    if (!spiral.at_height) start.at_mm[2] = bead_height_;
    start.angle = angle;
    const double last = angle + 2 * pi * spiral.turns;
    const Vector height = {0, 0, start.at_mm[2] + spiral.rise / millimetre};
    end_bead(at(spiral.end_radius, last) + height, last);
    return start;
  }

  MoveStart start(const Tail& tail) const {
    return tail.at_height ? standing({top_[0], top_[1], 0}, tail.at_height)
                          : MoveStart{.at_mm = top_};
  }

 private:
  static Vector at(Length radius, double angle) {
    return Vector{std::cos(angle), std::sin(angle), 0} * (radius / millimetre);
  }
  static MoveStart standing(const Vector& at, const std::optional<Length>& height) {
    return {.at_mm = at + Vector{0, 0, height.value_or(Length()) / millimetre}};
  }
  MoveStart lying(const Vector& at, const std::optional<Length>& height) const {
    return standing(at + Vector{0, 0, reach_.below_mm}, height);
  }
  void end_bead(const Vector& centre, double angle) {
    bead_height_ = centre[2];
    bead_angle_ = angle;
    top_ = centre + Vector{0, 0, reach_.above_mm};
  }

  SectionReach reach_;
  double bead_height_;  // of the last bead's centre line at its end; at first of one on the floor
  double bead_angle_ = 0;  // there
  Vector top_{};           // of the last bead's end or dollop; at first the floor's middle
};

}  // namespace

SectionReach reach_of(const Opening& opening, double bead_to_opening) {
  SectionReach reach{.below_mm = 0, .above_mm = 0, .any_way_mm = 0};
  for (const auto& [aside, up] : polygon_of(scaled(opening, std::sqrt(bead_to_opening)))) {
    reach.below_mm = std::max(reach.below_mm, -up);
    reach.above_mm = std::max(reach.above_mm, up);
    reach.any_way_mm = std::max(reach.any_way_mm, std::hypot(aside, up));
  }
  // Not to the corners of the polygon that stands for a circle.
  if (const auto* round = std::get_if<RoundOpening>(&opening))
    reach.any_way_mm = std::sqrt(bead_to_opening) * (round->radius / millimetre);
  return reach;
}

std::vector<MoveStart> starts_of(const std::vector<Move>& moves, const SectionReach& reach) {
  Walk walk(reach);
  std::vector<MoveStart> starts;
  for (const Move& move : moves)
    starts.push_back(std::visit([&](const auto& kind) { return walk.start(kind); }, move));
  return starts;
}

}  // namespace brimwright::geometry
