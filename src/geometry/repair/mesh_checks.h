#pragma once

#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::geometry {

/// A closed solid made ready for measuring, with what was changed on the way.
struct CheckedSolid {
  TriangleMesh solid;           // vertices shared, facets outward
  std::vector<Remark> remarks;  // for example: turned inside out
  SurfaceEdges edges;           // of the solid
};

/// Refuses, with UserError naming `file` and the facet, a mesh without facets, and one with a
/// corner that is not there or not finite.
void refuse_unsound_numbers(const TriangleMesh& mesh, const std::string& file);

/// Accepts a mesh that bounds a solid and refuses any other with UserError naming `file`, the place
/// in millimetres and the reason: no facets, coordinates not finite, flat, open (how many open
/// edges, the first one's place), facets turned against their neighbours, an edge shared by more
/// than two facets, surface crossing itself, no volume. A mesh that is only inside out is turned,
/// and said so.
CheckedSolid checked_solid(const TriangleMesh& mesh, const std::string& file);
/// The same for a mesh with its edges, whose equal corners are one already and whose facets have
/// three different corners.
CheckedSolid checked_welded(TriangleMesh mesh, SurfaceEdges edges, const std::string& file);

}  // namespace brimwright::geometry
