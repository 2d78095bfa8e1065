#pragma once

#include "geometry/levels/tilted_pour.h"
#include "geometry/surface/triangle_mesh.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "units/quantity.h"
#include "units/user_error.h"

#include <optional>
#include <vector>

namespace brimwright::planning {

/// One layer as it is poured: how much, and how the mould stands meanwhile.
struct LayerPour {
  Volume volume;
  std::optional<geometry::Tilt> tilted = {};  // absent, or with no angle: level
};

/// What one layer fills.
struct LayerSolid {
  geometry::TriangleMesh solid;  // closed, in the cavity's frame
  Length from, to;               // lowest and highest depth it reaches above the lowest point
  std::optional<SlopingSurface> surface = {};
};

/// The layers poured into one cavity, lowest first, each set before the next: a layer takes what
/// the ones before it left free below its own surface, which lies so that it holds the layer.
///
/// `cavity` is closed and faces outward, standing level with z up; `holding` times its volume is
/// the real one. Volumes are exact for the facetted solid.
///
/// UserError at `where`/number of the layer for a layer there is no room for, a tilted one that
/// would spill over the low brim or stands higher than the last layer's surface, and one that lies
/// in more than one pool, of which batter fills only the one it goes into (asked of tilted layers
/// and those that follow).
std::vector<LayerSolid> layer_solids(const geometry::TriangleMesh& cavity,
                                     const std::vector<LayerPour>& layers, double holding,
                                     const Place& where);

/// One cavity poured to the line, as solids in the frame of moulds::solid_of. `holding` times their
/// volumes are the real ones.
struct PouredCavity {
  std::vector<LayerSolid> layers;
  double holding = 1;
};

/// `cavity`, a solid of the run's mould, poured to `line`: `layers` (see layers_of), or one for a
/// plain pour.
PouredCavity poured_cavity(const Run& run, const geometry::TriangleMesh& cavity, Length line,
                           const std::vector<LayerTally>& layers);

}  // namespace brimwright::planning
