#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/repair/mend_holes.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::geometry {

/// A closed solid that was mended where it had to be, and proved to bound what it encloses.
struct SoundSolid {
  TriangleMesh solid;  // welded, facets outward
  SurfaceEdges edges;  // of it
  std::vector<Remark> remarks;
};

/// Mends a mesh (mesh_mending.h) and checks it (mesh_checks.h). `is_welded`: its equal corners are
/// one already. UserError naming `file` for what cannot be mended soundly (LargeHole); places in
/// remarks are as `frame` has them.
SoundSolid sound_solid(TriangleMesh mesh, bool is_welded, const std::string& file,
                       const FileFrame& frame);

/// The separate solids of a sound surface: each outer shell with its hollows, in the order of their
/// first facets. Solids lying in a hollow of another are solids of their own.
std::vector<TriangleMesh> parts_of(const TriangleMesh& solid);

/// The inner surface of something, open where its rims are.
struct SoundSkin {
  TriangleMesh skin;      // welded
  std::vector<Rim> rims;  // the widest first
  std::vector<Remark> remarks;
};

/// Mends a mesh as a skin, likewise.
SoundSkin sound_skin(const TriangleMesh& mesh, bool is_welded, const std::string& file,
                     const FileFrame& frame);

}  // namespace brimwright::geometry
