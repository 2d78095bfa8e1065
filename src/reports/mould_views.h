#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <vector>

namespace brimwright::reports {

/// Closed lines in a view of a cavity, in millimetres as it is made: across and, in the section,
/// up, in the plan away from the viewer.
using ViewLine = std::vector<std::array<double, 2>>;
using ViewLines = std::vector<ViewLine>;

/// From where to where something reaches across.
struct Reach {
  double from, to;
};

/// A cavity as a drawing shows it: cut upright across, and from above.
struct MouldViews {
  std::array<double, 2> across, away, up;  // where the cavity lies: lowest and highest of each
  double cut;                              // how far away the section is taken
  ViewLines section;                       // seen from the front
  std::vector<Reach> brim_reaches, floor_reaches;  // of the section's level edges there
  ViewLines brim, floor;  // plan at the brim and the floor; none where the cavity ends in a point
  ViewLines widest;       // plan at its widest, where walls reach out beyond the brim
};

/// The section is taken where it is widest: through the middle, or where the cavity reaches
/// furthest to a side. `solid` is a closed, outward-facing solid.
MouldViews views_of(const geometry::TriangleMesh& solid);

/// Plan of the cavity at a depth above its lowest point, just below that level.
ViewLines plan_at(const geometry::TriangleMesh& solid, Length depth);

}  // namespace brimwright::reports
