#pragma once

#include "geometry/levels/level_curve.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"

#include <array>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace brimwright::geometry {

/// A fillable hollow in a mould's body, or a well in a skin. Heights are in the mesh's frame.
struct Pocket {
  LevelCurve curve;          // floor to brim, exact, over the pocket's own facets
  double floor_mm, brim_mm;  // its lowest point, and the height at which it spills
  Point floor_at_mm;
  Point spills_at_mm;  // a point of its rim; of a level rim, any
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
  Point at_mm;
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
/// The same of a surface that may be no body: that it surely holds nothing is told much sooner.
PocketSurvey pockets_if_any(const TriangleMesh& closed);

/// What a body holds, without what its pockets are like.
struct HeldInShort {
  std::size_t pockets = 0;
  Volume held = {};     // by all of them together
  Volume largest = {};  // by one
  Volume solid = {};    // as PocketSurvey's; left out where there are surely no pockets
};
using Turn = std::function<Point(const Point&)>;
/// The same as pockets_of_body would say of a body turned in each of these ways, none of which
/// mirrors it; several at a time.
std::vector<HeldInShort> held_when_turned(const TriangleMesh& body, const std::vector<Turn>& turns);

/// The wells of an open skin, and how they lie to its sheets.
struct SkinWells {
  PocketSurvey wells;
  // What fills them would wet both sides of one and the same sheet. A mould's inner surface is wet
  // on one; a body with a facet missing holds liquid in its pocket and in its own stuff.
  bool wet_both_sides = false;
};

/// `skin` is a surface without thickness; either side may face out. Vertices shared, neighbours
/// turned alike, not crossing itself. Both its sides hold liquid.
SkinWells skin_wells(const TriangleMesh& skin);

/// What a closed solid that is filled from above, to its highest point, is like to fill.
struct FilledFromAbove {
  std::optional<Volume> trapped_air;  // nothing where its surface without the lid holds less
  std::vector<Undercut> undercuts;
};
/// `brimful` is what the solid encloses.
FilledFromAbove filled_from_above(const TriangleMesh& solid, Volume brimful);

}  // namespace brimwright::geometry
