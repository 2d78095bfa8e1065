#include "cli/complaint.h"

#include "units/shown_text.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace brimwright::cli {
namespace {

using Json = nlohmann::ordered_json;

/// The words to add to the command, and how large the thing would then be.
Json choice_json(const Choice& choice) {
  Json words = Json::array();
  for (const auto& [member, value] : choice.answers) {
    words.push_back("--" + member);
    if (!value.empty()) words.push_back(value);
  }
  Json json = {{"add", words}};
  if (choice.size)
    for (const Length length : *choice.size)
      json["size_mm"].push_back(std::round(length / millimetre * 100) / 100);
  return json;
}

std::string json_line(const UserError::Parts& parts, const std::vector<Choice>& choices) {
  Json json = {{"schema", "brimwright.complaint/1"},
               {"file", parts.file},
               {"field", parts.field},
               {"problem", parts.problem},
               {"remedy", parts.remedy}};
  for (const Choice& choice : choices) json["choices"].push_back(choice_json(choice));
  // In ASCII, so that no control code of a name reaches a terminal; names need not be UTF-8.
  return json.dump(-1, ' ', true, Json::error_handler_t::replace);
}

}  // namespace

void complain(std::ostream& err, Voice voice, const std::string& line,
              const UserError::Parts& parts, const std::vector<Choice>& choices) {
  err << (voice == Voice::json ? json_line(parts, choices) : on_one_line(line)) << "\n";
}

void complain_of_fault(std::ostream& err, Voice voice, const std::string& line) {
  complain(err, voice, line, {.file = "", .field = "", .problem = line, .remedy = ""});
}

}  // namespace brimwright::cli
