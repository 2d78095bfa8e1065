#pragma once

#include "geometry/level_curve.h"
#include "geometry/mesh_file.h"
#include "geometry/pockets.h"
#include "geometry/triangle_mesh.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/user_error.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::geometry {

/// What a mesh is: the hollow itself (or the finished piece), the mould with its pockets, or the
/// mould's inner surface, open at the top.
enum class Role { cavity, body, skin };
std::string name_of(Role role);
Role role(const std::string& text, const Place& where);  ///< "cavity", "body" or "skin"

/// One thing to fill, found in a mesh.
struct Hollow {
  LevelCurve curve;                   // floor to brim
  double floor_mm, brim_mm;           // heights in the mesh's frame, +z up
  std::array<double, 2> middle_mm;    // seen from above
  Area opening;                       // free surface just below the brim
  std::optional<Volume> trapped_air;  // nothing where the opening is not level, so not known
  std::optional<std::array<double, 3>> spills_at_mm;  // of a body's or skin's pocket
  TriangleMesh wall;                                  // of a pocket, facing into it
};

/// What a mesh file holds, measured.
struct MeshSurvey {
  Role role;
  LengthUnit unit;
  Axis up;
  TriangleMesh mesh;            // mended, upright, in millimetres
  std::vector<Hollow> hollows;  // a cavity mesh has one for each separate solid
  std::vector<JointBasin> basins;
  std::vector<Remark>
      remarks;  // mends, the role found, the way it stands, undercuts, coarse facets
};

/// What the person said of the mesh.
struct SurveyWishes {
  MeshReading reading = {};
  std::optional<Role> role = {};
  /// Stand a body on a flat board, which closes what is open below; not with another role.
  bool on_board = false;
};

/// Reads, mends and measures a mesh file.
///
/// Without a role it is found: an open surface with one high rim is a skin; a closed one is a body
/// if its pockets are more than 5 % of pockets and solid together, a cavity if less than 1 % and if
/// no other way up makes it a body. In between, or when only another way up holds liquid, UserError
/// asks, with the options to type. UserError also for what cannot be mended and for a body or skin
/// that holds nothing.
MeshSurvey surveyed(const std::string& path, const SurveyWishes& wishes);

/// One hollow of a survey as a closed solid facing outward, from its floor to its brim.
TriangleMesh solid_of(const MeshSurvey& survey, std::size_t hollow);

}  // namespace brimwright::geometry
