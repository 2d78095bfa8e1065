#pragma once

#include "geometry/surface/triangle_mesh.h"
#include "units/quantity.h"
#include "units/user_error.h"

namespace brimwright::moulds {

/// The box in which a maker casts a mould of silicone or plaster round a master: the piece itself,
/// or the solid of what a cavity is to hold.
struct CastingBox {
  /// Standing on the box's floor, the base is cast over it and the mould turned over to open; hung
  /// with its top at the surface, the base is cast under it.
  enum class Master { standing, hung };

  Length wall;  // on each side of the master, at its widest
  Length base;  // thickness of the mould's floor
  Master master = Master::standing;
};

/// What fills the box round the master.
struct CastingNeed {
  Volume material;                // silicone or plaster; times its density, the mass to mix
  Volume master;                  // what the master displaces
  Length length, width, height;   // inside of the box, which is the mould's outside
  Length master_from, master_to;  // heights in the box between which the master is
};

/// For a checked, outward-facing master standing with +z up, as it is to be cast. Exact for the
/// solid: the box less the master; a sealed void in the master stays empty. Nothing is added for
/// what stays in the mixing cup. UserError at `where` for a wall or base that is none.
CastingNeed casting_need(const geometry::TriangleMesh& master, const CastingBox& box,
                         const Place& where);

}  // namespace brimwright::moulds
