#pragma once

#include "geometry/pockets/pockets.h"
#include "geometry/surface/triangle_mesh.h"

namespace brimwright::geometry {

/// The wells of an open skin (see pockets_of_skin), and how they lie to its sheets.
struct SkinWells {
  PocketSurvey wells;
  // What fills them would wet both sides of one and the same sheet. A mould's inner surface is wet
  // on one; a body with a facet missing holds liquid in its pocket and in its own stuff.
  bool wet_both_sides = false;
};

SkinWells skin_wells(const TriangleMesh& skin);

}  // namespace brimwright::geometry
