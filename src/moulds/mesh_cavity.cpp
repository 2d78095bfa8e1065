#include "moulds/mesh_cavity.h"

#include "moulds/mesh_memory.h"
#include "units/printing.h"

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
    if (!solid) {
      solid = std::make_shared<const geometry::TriangleMesh>(solid_of(cavities.survey, typical));
    }
    return solid;
  }

 private:
  std::mutex mutex_;
  std::map<std::size_t, std::shared_ptr<const geometry::TriangleMesh>> solids_;
};

namespace {

/// "1: 12 of 73.8 ml; 2: 1 of 4.1 ml".
std::string listed_by_group(const std::vector<HollowGroup>& groups) {
  std::string text;
  for (std::size_t i = 0; i < groups.size(); ++i)
    text += (i > 0 ? "; " : "") + std::to_string(i + 1) + ": " +
            std::to_string(groups[i].members.size()) + " of " +
            fixed(groups[i].most / millilitre, 1) + " ml";
  return text;
}

/// Which hollows are filled must be said where they differ: a run is of one kind of piece.
void choose_group(MeshCavities& cavities, const Fields& fields) {
  const auto groups = static_cast<std::int64_t>(cavities.groups.size());
  if (fields.has("group")) {
    cavities.used = static_cast<std::size_t>(fields.whole_number("group", 1, groups)) - 1;
    return;
  }
  if (groups > 1)
    throw UserError(fields.place("group"),
                    "is missing, and the mesh has hollows of different sizes (" +
                        listed_by_group(cavities.groups) + ")",
                    "give the number of those that are filled");
}

}  // namespace

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
            std::to_string(group.members.size()) + " of " + fixed(group.most / millilitre, 1) +
            " ml";
  return text;
}

void take_one(MeshCavities& cavities, const std::string& number, const Place& where) {
  const std::size_t hollows = cavities.survey.hollows.size();
  for (std::size_t group = 0; group < cavities.groups.size(); ++group) {
    for (const std::size_t member : cavities.groups[group].members) {
      if (std::to_string(member + 1) != number) continue;
      cavities.used = group;
      cavities.one = member;
      return;
    }
  }
  throw UserError(where, "\"" + number + "\" is none of the mesh's cavities",
                  hollows == 1 ? std::string("it has one; leave the option out")
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

MeshCavities measured_mesh(const std::string& path, const SurveyWishes& wishes,
                           const Library& library) {
  if (!library.memory) return measured_mesh(path, wishes);
  return library.memory->measured(path, wishes, library.only_remembered);
}

MeshCavities read_mesh_cavities(const Fields& fields, const Library& library) {
  SurveyWishes wishes;
  wishes.role = role(fields.text("role"), fields.place("role"));
  wishes.reading.unit_belongs_at = fields.place("unit");
  if (const auto unit = fields.optional_text("unit"))
    wishes.reading.unit = geometry::length_unit(*unit, fields.place("unit"));
  if (const auto up = fields.optional_text("up"))
    wishes.reading.up = geometry::axis(*up, fields.place("up"));
  if (const auto leaning = fields.optional_text("leaning_up"))
    wishes.reading.leaning_up = geometry::direction(*leaning, fields.place("leaning_up"));
  if (fields.has("on_board")) wishes.on_board = fields.truth("on_board");
  if (wishes.on_board && wishes.role != Role::body)
    throw UserError(fields.place("on_board"),
                    "goes with a mould's body, not with a " + name_of(*wishes.role),
                    "leave it out, or give the role \"body\"");
  const std::string path = library.resolve(fields.text("file"), fields.place("file"));
  fields.has("group");
  fields.refuse_unknown();
  MeshCavities cavities = measured_mesh(path, wishes, library);
  choose_group(cavities, fields);
  return cavities;
}

}  // namespace brimwright::moulds
