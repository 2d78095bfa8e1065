#pragma once

#include "geometry/repair/flaw.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// What was done to the whole shells of a closed surface.
struct ShellMends {
  TriangleMesh mesh;
  std::vector<Mend> mends;
};

/// Makes every place inside once or not at all: turns parts that face inward, and unites parts that
/// overlap or touch. Parts lying in the hollow of another, and hollows, stay as they are.
///
/// For a welded mesh, with its edges, without open edges, whose shells each show one side; edges of
/// more than two facets may stand where several shells touch. UserError naming `file` where the
/// meaning is not plain: a part inside another that faces the same way (solid, or a hollow turned
/// wrong?), parts of which some face inward and cross others, an edge crowded within one shell, a
/// part that crosses itself, or a union that takes too long.
ShellMends sound_shells(TriangleMesh mesh, const SurfaceEdges& edges, const std::string& file);

}  // namespace brimwright::geometry
