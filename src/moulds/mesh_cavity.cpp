#include "moulds/mesh_cavity.h"

#include "units/wording.h"

#include <filesystem>
#include <map>
#include <mutex>
#include <utility>

namespace brimwright::moulds {

/// Cutting a pocket's solid out of a large body takes longer than all else that a remembered mesh
/// still needs.
class TypicalSolids {
 public:
  std::shared_ptr<const geometry::TriangleMesh> of(const MeshCavities& cavities) {
    const std::scoped_lock alone(mutex_);
    const std::size_t typical = cavities.typical_number();
    auto& solid = solids_[typical];
    if (!solid)
      solid = std::make_shared<const geometry::TriangleMesh>(solid_of(cavities.survey, typical));
    return solid;
  }

 private:
  std::mutex mutex_;
  std::map<std::size_t, std::shared_ptr<const geometry::TriangleMesh>> solids_;
};

std::string numbers_text(const std::vector<std::size_t>& members) {
  std::string text;
  for (std::size_t i = 0; i < members.size(); ++i) {
    const std::size_t first = i;
    while (i + 1 < members.size() && members[i + 1] == members[i] + 1) ++i;
    text += (text.empty() ? "" : ", ") + std::to_string(members[first] + 1);
    if (i > first) text += (i > first + 1 ? " to " : ", ") + std::to_string(members[i] + 1);
  }
  return text;
}

std::string listed(const std::vector<HollowGroup>& groups) {
  std::string text;
  for (const HollowGroup& group : groups)
    text += (text.empty() ? "" : "; ") + numbers_text(group.members) + ": " +
            std::to_string(group.members.size()) + " of " + fixed_ml(group.most);
  return text;
}

void take_one(MeshCavities& cavities, const std::string& number, const UserTerms& terms) {
  const std::size_t hollows = cavities.survey.hollows.size();
  for (std::size_t group = 0; group < cavities.groups.size(); ++group) {
    for (const std::size_t member : cavities.groups[group].members) {
      if (std::to_string(member + 1) != number) continue;
      cavities.used = group;
      cavities.one = member;
      return;
    }
  }
  throw UserError(terms.place("cavity"), "\"" + number + "\" is none of the mesh's cavities",
                  hollows == 1 ? "it has one; leave the " + terms.one + " out"
                               : "give a number from 1 to " + std::to_string(hollows) + " (" +
                                     listed(cavities.groups) + ")");
}

std::shared_ptr<const geometry::TriangleMesh> typical_solid(const MeshCavities& cavities) {
  return cavities.solids->of(cavities);
}

MeshCavities measured_mesh(const std::string& path, const SurveyWishes& wishes) {
  MeshCavities cavities{.survey = surveyed(path, wishes),
                        .groups = {},
                        .used = 0,
                        .description = "mesh " + std::filesystem::path(path).filename().string(),
                        .solids = std::make_shared<TypicalSolids>()};
  cavities.description += " in " + geometry::name_of(cavities.survey.unit);
  cavities.groups = groups_of(cavities.survey.hollows);
  return cavities;
}

}  // namespace brimwright::moulds
