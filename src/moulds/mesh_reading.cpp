#include "moulds/mesh_reading.h"

#include "moulds/mesh_memory.h"
#include "units/wording.h"

#include <utility>

namespace brimwright::moulds {
namespace {

/// "1: 12 of 73.8 ml; 2: 1 of 4.1 ml".
std::string listed_by_group(const std::vector<HollowGroup>& groups) {
  std::string text;
  for (std::size_t i = 0; i < groups.size(); ++i)
    text += (i > 0 ? "; " : "") + std::to_string(i + 1) + ": " +
            std::to_string(groups[i].members.size()) + " of " + fixed_ml(groups[i].most);
  return text;
}

/// Which hollows are filled must be said where they differ: a run is of one kind of piece.
void choose_group(MeshCavities& cavities, const Fields& fields) {
  const auto groups = static_cast<std::int64_t>(cavities.groups.size());
  if (fields.has("cavity_size_number")) {
    cavities.used =
        static_cast<std::size_t>(fields.whole_number("cavity_size_number", 1, groups)) - 1;
    return;
  }
  if (groups > 1)
    throw UserError(fields.place("cavity_size_number"),
                    "is missing, and the mesh has cavities of different sizes (" +
                        listed_by_group(cavities.groups) + ")",
                    "give the number of those that are filled");
}

/// The key under "mesh" that says a member: a direction that leans has one of its own.
std::string key_of(const Answer& answer) {
  if (answer.member == "on-board") return "on_board";
  return answer.member == "up" && answer.value.find(',') != std::string::npos ? "straight_up"
                                                                              : answer.member;
}

/// What the mesh leaves open is asked at the key that answers it, unless it is about one place of
/// the mesh.
Question at_key(const Question& question, const Fields& fields) {
  Question::Parts parts = question.in_parts();
  UserTerms terms = terms_of_mesh(fields);
  if (parts.field.empty()) {
    const bool is_missing = !fields.has(parts.asks);
    parts.problem = (is_missing ? "is missing, and " : "") + parts.file + " " + parts.problem;
    const Place place = terms.place(parts.asks);
    parts.file = place.file;
    parts.field = place.field;
    if (is_missing)
      terms.say = [asks = parts.asks, say = terms.say](const Answer& answer) {
        return answer.member == asks ? "\"" + answer.value + "\"" : say(answer);
      };
  }
  return Question(std::move(parts)).in(terms);
}

MeshCavities measured_as_said(const std::string& path, const SurveyWishes& wishes,
                              const Library& library, const Fields& fields) {
  try {
    return measured_mesh(path, wishes, library);
  } catch (const Question& question) {
    throw at_key(question, fields);
  }
}

}  // namespace

UserTerms terms_of_mesh(const Fields& fields) {
  return {.place = [fields](const std::string& member) { return fields.place(key_of({member})); },
          .say =
              [fields](const Answer& answer) {
                const std::string key = fields.quoted(key_of(answer)) + ": ";
                return key + (answer.value.empty() ? "true" : "\"" + answer.value + "\"");
              },
          .one = "key",
          .are_keys = true};
}

MeshCavities read_mesh_cavities(const Fields& fields, const Library& library) {
  SurveyWishes wishes;
  wishes.role = role(fields.text("role"), fields.place("role"));
  if (const auto unit = fields.optional_text("unit"))
    wishes.reading.unit = geometry::length_unit(*unit, fields.place("unit"));
  if (const auto up = fields.optional_text("up"))
    wishes.reading.up = geometry::axis(*up, fields.place("up"));
  if (const auto leaning = fields.optional_text("straight_up"))
    wishes.reading.straight_up = geometry::direction(*leaning, fields.place("straight_up"));
  if (fields.has("on_board")) wishes.on_board = fields.truth("on_board");
  if (wishes.on_board && wishes.role != Role::body)
    throw UserError(fields.place("on_board"),
                    "goes with a mould's body, not with a " + name_of(*wishes.role),
                    "leave it out, or give the role \"body\"");
  const std::string path = library.resolve(fields.text("file"), fields.place("file"));
  fields.has("cavity_size_number");
  fields.refuse_unknown();
  MeshCavities cavities = measured_as_said(path, wishes, library, fields);
  choose_group(cavities, fields);
  return cavities;
}

}  // namespace brimwright::moulds
