#pragma once

#include "geometry/beads/move.h"
#include "geometry/beads/nozzle.h"
#include "geometry/surface/vectors.h"

#include <cstddef>
#include <vector>

namespace brimwright::geometry {

/// How far a bead reaches from its centre line, its section standing upright.
struct SectionReach {
  double below_mm, above_mm;  // lowest and highest corner
  double any_way_mm;          // farthest corner
};
SectionReach reach_of(const Opening& opening, double bead_to_opening);

/// Where a move starts.
struct MoveStart {
  Vector at_mm{};    // of a bead: its centre line's start; of the others, the foot's middle
  double angle = 0;  // of a spiral, radians from x
};
std::vector<MoveStart> starts_of(const std::vector<Move>& moves, const SectionReach& reach);

/// A centre line in steps.
struct BeadPath {
  std::vector<Vector> points_mm;
  std::vector<Vector> tangents;  // of length one
  std::vector<Vector> bends;     // towards the bend's centre, one over its radius in mm long
  bool is_closed = false;        // the last point is followed by the first
};
BeadPath path_of(const Ring& ring, const MoveStart& start, double facet_mm);
BeadPath path_of(const ConicalSpiral& spiral, const MoveStart& start, double facet_mm);
BeadPath path_of(const StraightBead& bead, const MoveStart& start, double facet_mm);

/// How many points these paths have, without making them.
std::size_t points_of(const Ring& ring, double facet_mm);
std::size_t points_of(const ConicalSpiral& spiral, double facet_mm);
std::size_t points_of(const StraightBead& bead, double facet_mm);

/// In closed form, with nothing subtracted that could cancel: a cylinder's spiral and a nearly
/// cylindrical one are as exact as any.
Length arc_length(const ConicalSpiral& spiral);

}  // namespace brimwright::geometry
