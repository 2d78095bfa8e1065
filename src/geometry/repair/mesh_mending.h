#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/repair/flaw.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::geometry {

/// What a mesh is to become.
enum class MendAim {
  closed_solid,
  open_skin,  // the inner surface of a mould: the widest rim of each shell stays open
};

struct Mended {
  TriangleMesh mesh;  // welded
  std::vector<Mend> mends;
  SurfaceEdges edges;  // of that mesh
};

/// Puts right what can be put right without guessing, and tells each step:
///  1. corners made one: equal ones, without a word; on open edges also those within 1e-6, then
///     1e-5, of the mesh's diagonal;
///  2. facets without area and facets lying on each other left away;
///  3. T-junction slits within 1e-5 of the diagonal closed;
///  4. facets turned to face as their neighbours do;
///  5. loose scraps left away, small holes filled (see mend_holes.h);
///  6. of a closed surface: whole parts turned to face outward, overlapping parts united (see
///     mend_shells.h); of a skin: turned to face away from the hollow's inside.
/// A step of the first five that leaves no fewer faulty edges is undone.
///
/// A sound mesh comes back as it was, but welded, with no mends. UserError naming `file`, with the
/// place, for what cannot be mended soundly: a hole too large to fill (LargeHole), an edge of more
/// than two facets, facets that turn a one-sided surface, doubtful nesting and crossing. Whether a
/// single shell crosses itself, and whether anything is enclosed, is left to checked_solid.
Mended mended(const TriangleMesh& mesh, const std::string& file, MendAim aim);
/// The same for a mesh whose equal corners are one already.
Mended mended_welded(TriangleMesh mesh, const std::string& file, MendAim aim);

/// One sentence for each mend, with its place, as `frame` has it, and its bound; a caution where
/// the bound is above 0.1 % of the mesh's volume, or, for a skin, of its box.
std::vector<Remark> remarks_of(const Mended& mended, const std::string& file,
                               const FileFrame& frame = {});

struct EdgeFaults {
  EdgeFault open, crowded, turned;
};

struct MendedSurface {
  SurfaceEdges edges;
  std::vector<Mend> mends;
  EdgeFaults before;  // of the edges, but for facets that had collapsed
};

/// Steps 1 to 4, which inspection tries too, on a mesh whose equal corners are one already.
MendedSurface mend_surface(TriangleMesh& mesh);

}  // namespace brimwright::geometry
