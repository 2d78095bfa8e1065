#pragma once

#include "geometry/level_curve.h"
#include "geometry/mesh_file.h"
#include "moulds/library.h"
#include "units/fields.h"
#include "units/remark.h"

#include <string>
#include <vector>

namespace brimwright::moulds {

/// A cavity known by its mesh.
struct MeshCavity {
  geometry::LevelCurve curve;
  Length floor;             // height of the lowest point in the mesh's own frame
  std::string description;  // "mesh cup.stl in mm"
  std::vector<Remark> remarks;
};

/// Reads and checks the closed mesh of what is filled. UserError as geometry's readers throw it.
MeshCavity measured_mesh(const std::string& path, const geometry::MeshReading& reading);

/// The mesh that the object under "mesh" of a mould file names, with its unit, role and upright
/// axis.
MeshCavity read_mesh_cavity(const Fields& fields, const Library& library);

}  // namespace brimwright::moulds
