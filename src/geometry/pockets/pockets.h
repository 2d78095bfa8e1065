#pragma once

#include "geometry/levels/level_curve.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// A fillable hollow in a mould's body, or a well in a skin. Heights are in the mesh's frame.
struct Pocket {
  LevelCurve curve;          // floor to brim, exact, over the pocket's own facets
  double floor_mm, brim_mm;  // its lowest point, and the height at which it spills
  std::array<double, 3> floor_at_mm;
  std::array<double, 3> spills_at_mm;  // a point of its rim; of a level rim, any
  // How high its wall goes on where it does not spill: at most, and half of the way round. Both are
  // at the brim where the rim is level; a notch leaves both above it.
  double rim_highest_mm, rim_usual_mm;
  std::array<double, 2> middle_mm;  // of the box round its wall below the brim, seen from above
  Area opening;                     // free surface just below the spill
  Volume brimful;
  Volume trapped_air;  // part of brimful that stays empty under ledges, poured upright to the brim
  std::optional<std::size_t> basin;  // the outermost joint basin that it belongs to
  TriangleMesh wall;                 // what bounds it, facing into it; may go on above the brim
};

/// What several pockets hold together when filled past the walls between them. Where three or more
/// unite one after the other, each step is a basin of its own.
struct JointBasin {
  std::vector<std::size_t> pockets;
  LevelCurve curve;  // as if each level stood in all of the pockets
  double floor_mm, brim_mm;
  Volume brimful;
};

/// A patch of wall inside a pocket that leans over what is poured, and so hinders unmoulding.
struct Undercut {
  std::size_t pocket;
  std::array<double, 3> at_mm;
  Area area;
};

struct PocketSurvey {
  std::vector<Pocket> pockets;  // by floor, upwards; equal floors in the order of the file's facets
  std::vector<JointBasin> basins;   // those of few pockets before those they unite in
  std::vector<Undercut> undercuts;  // by pocket, the largest first
  std::size_t sealed_voids = 0;     // hollows without any way in
  Volume sealed_volume;
  std::size_t dents = 0;  // hollows that would hold liquid but are too small to be pockets
  Volume dents_volume;
  Volume solid;  // enclosed by the body's surface, zero for a skin
};

/// The pockets of a mould's body as it stands, +z up: closed, facing outward, vertices shared, no
/// two facets crossing or touching but at shared corners and edges (see mesh_checks.h).
///
/// Exact but for the rounding of sums: no level is sampled and nothing is cut. A hollow is a dent
/// if it is shallower than 1e-4 of the body's height or holds less than 2 % of the largest pocket.
/// Hollows that unite below their common brim are pockets of their own if two or more are at least
/// half as deep as the whole and not dents in it; else the whole is one pocket with relief in its
/// floor. Where a scan's noise makes puddles on the top face that hang together with a pocket, they
/// are left out of its curve, so that the top does not count as free surface.
PocketSurvey pockets_of_body(const TriangleMesh& body);

/// The wells of an open skin, a surface without thickness; either side may face out. Vertices
/// shared, neighbours turned alike, not crossing itself. Both its sides hold liquid.
PocketSurvey pockets_of_skin(const TriangleMesh& skin);

}  // namespace brimwright::geometry
