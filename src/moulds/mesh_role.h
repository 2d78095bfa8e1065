#pragma once

#include "geometry/files/mesh_file.h"
#include "geometry/pockets/pockets.h"
#include "geometry/surface/surface_edges.h"
#include "geometry/surface/triangle_mesh.h"
#include "units/question.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

/// What a mesh is: the hollow itself (or the finished piece), the mould with its pockets, or the
/// mould's inner surface, open at the top.
enum class Role { cavity, body, skin };
std::string name_of(Role role);
Role role(const std::string& text, const Place& where);  ///< "cavity", "body" or "skin"

/// What to ask where a mesh does not tell its role, or its upright: what is unclear, and what to
/// say. No volume stands in either: what a question leads to may be another figure.
struct RoleQuestion {
  std::string asks;  // "role" or "up"
  Words problem, remedy;
  std::vector<Choice> choices;
};

/// The role of a closed mesh, or a question where it is not clear. A wrong answer is worse than a
/// question, so only two kinds are answered:
///
///  - a body: its pockets are at least half of pockets and solid together, or at least a quarter
///    and two or more; the deepest goes down through at least 0.65 of its height; and, unless the
///    person said which way is up, no other way up is as good a body or has two pockets or more;
///  - a cavity (or finished piece): one solid whose pockets are less than 0.001 of it as it stands
///    and less than 0.01 any other way up, that fills at least 0.78 of the least convex solid round
///    it, has no hole through it, no hollow shut up in it, and no dent that is deeper than 3 mm or
///    than a tenth of its least extent.
///
/// The bounds are our own, tried on the solids of tests/geometry/role_solids.cpp, whose test tells
/// how many are answered, asked and mistaken. Known to be mistaken: a finished piece shaped as a
/// mould is, with deep pockets, which no geometry tells from one; and a thick mould whose only
/// hollow runs out at its ends and is no deeper than an engraving.
struct RoleFinding {
  std::optional<Role> role;
  Words told;             // what it was taken for, and why
  RoleQuestion question;  // where there is no role
};
RoleFinding role_of_closed(const geometry::TriangleMesh& mesh, const geometry::SurfaceEdges& edges,
                           const geometry::PocketSurvey& pockets, geometry::Axis up,
                           bool up_is_said);

/// Whether a body of one pocket may be upside down: a tray with a skirt is then one big basin.
std::optional<RoleQuestion> is_it_upside_down(const geometry::TriangleMesh& body,
                                              const geometry::PocketSurvey& pockets,
                                              geometry::Axis up);

}  // namespace brimwright::moulds
