#pragma once

#include "geometry/mesh_survey.h"
#include "moulds/hollow_groups.h"
#include "moulds/library.h"
#include "units/fields.h"

#include <memory>
#include <string>
#include <vector>

namespace brimwright::moulds {

class TypicalSolids;

/// A mould's cavities known by a mesh: what was found in it, and which of it is filled.
struct MeshCavities {
  geometry::MeshSurvey survey;
  std::vector<HollowGroup> groups;             // of the hollows found
  std::size_t used = 0;                        // the group that is filled
  std::string description;                     // "mesh cup.stl in mm"
  std::shared_ptr<TypicalSolids> solids = {};  // made when first asked for; copies share them

  const geometry::Hollow& typical() const { return survey.hollows[groups[used].typical]; }
  int count() const { return static_cast<int>(groups[used].members.size()); }
};

/// The typical cavity as a closed solid facing outward, in the mesh's frame.
std::shared_ptr<const geometry::TriangleMesh> typical_solid(const MeshCavities& cavities);

/// Reads, mends and measures a mesh; the group that holds most is the one used.
MeshCavities measured_mesh(const std::string& path, const geometry::SurveyWishes& wishes);
/// The same, remembered where the library has a memory.
MeshCavities measured_mesh(const std::string& path, const geometry::SurveyWishes& wishes,
                           const Library& library);

/// The mesh that the object under "mesh" of a mould file names, with its unit, role, upright axis
/// and, where its hollows differ, the group of them that is filled.
MeshCavities read_mesh_cavities(const Fields& fields, const Library& library);

}  // namespace brimwright::moulds
