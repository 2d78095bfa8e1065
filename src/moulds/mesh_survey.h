#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/levels/level_curve.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/triangle_mesh.h"
#include "moulds/mesh_role.h"
#include "units/quantity.h"
#include "units/question.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

/// One thing to fill, found in a mesh.
struct Hollow {
  geometry::LevelCurve curve;         // floor to brim
  double floor_mm, brim_mm;           // heights in the mesh's frame, +z up
  std::array<double, 2> middle_mm;    // seen from above
  Area opening;                       // free surface just below the brim
  std::optional<Volume> trapped_air;  // nothing where the opening is not level, so not known
  // Of a body's or skin's pocket: where it spills, and how high its wall goes on elsewhere, at most
  // and half of the way round.
  std::optional<geometry::Point> spills_at_mm;
  double rim_highest_mm = 0, rim_usual_mm = 0;
  geometry::TriangleMesh wall;  // of a pocket, facing into it
};

/// What a mesh file holds, measured.
struct MeshSurvey {
  Role role;
  geometry::LengthUnit unit;
  geometry::Axis up;
  geometry::FileFrame frame;    // how the file lay
  geometry::TriangleMesh mesh;  // mended, upright, in millimetres
  std::vector<Hollow> hollows;  // a cavity mesh has one for each separate solid
  std::vector<geometry::JointBasin> basins;
  std::vector<Advice> remarks;  // mends, the role found, the way it stands, rims, coarse facets
  std::optional<std::string> undercuts;  // where the wall leans over what is poured, in words
};

/// What the person said of the mesh.
struct SurveyWishes {
  geometry::MeshReading reading = {};
  std::optional<Role> role = {};
  /// Stand a body on a flat board, which closes what is open below; not with another role.
  bool on_board = false;
};

/// Reads, mends and measures a mesh file.
///
/// Without a role it is found where it is clear: an open surface whose rims all lie in its upper
/// half is a skin, a closed one a body or a cavity as role_of_closed tells. Where it is not clear,
/// and where a body of one pocket may be upside down and nobody said which way is up, a Question
/// asks for "role" or "up". UserError also for what cannot be mended and for a body or skin
/// that holds nothing. Places in errors and remarks are in the file's own numbers and axes.
MeshSurvey surveyed(const std::string& path, const SurveyWishes& wishes);

/// One hollow of a survey as a closed solid facing outward, from its floor to its brim.
geometry::TriangleMesh solid_of(const MeshSurvey& survey, std::size_t hollow);

}  // namespace brimwright::moulds
