#pragma once

#include "moulds/hollow_groups.h"
#include "moulds/mesh_survey.h"
#include "units/question.h"
#include "units/user_error.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::moulds {

class TypicalSolids;

/// A mould's cavities known by a mesh: what was found in it, and which of it is filled.
struct MeshCavities {
  MeshSurvey survey;
  std::vector<HollowGroup> groups;             // of the hollows found
  std::size_t used = 0;                        // the group that is filled
  std::optional<std::size_t> one = {};         // a hollow that was asked for alone, of that group
  std::string description;                     // "mesh cup.stl in mm"
  std::shared_ptr<TypicalSolids> solids = {};  // made when first asked for; copies share them

  std::size_t typical_number() const { return one.value_or(groups[used].typical); }
  const Hollow& typical() const { return survey.hollows[typical_number()]; }
  int count() const { return one ? 1 : static_cast<int>(groups[used].members.size()); }
};

/// The typical cavity as a closed solid facing outward, in the mesh's frame.
std::shared_ptr<const geometry::TriangleMesh> typical_solid(const MeshCavities& cavities);

/// "1 to 4: 4 of 59.2 ml; 5: 1 of 4.1 ml", hollows numbered from 1 as found.
std::string listed(const std::vector<HollowGroup>& groups);
/// "1, 3 to 5": numbers from 1 of what is numbered from 0, ascending.
std::string numbers_text(const std::vector<std::size_t>& members);

/// Takes the hollow with that number, from 1, alone; UserError at "cavity" if there is none.
void take_one(MeshCavities& cavities, const std::string& number, const UserTerms& terms);

/// Reads, mends and measures a mesh; the group that holds most is the one used.
MeshCavities measured_mesh(const std::string& path, const SurveyWishes& wishes);

}  // namespace brimwright::moulds
