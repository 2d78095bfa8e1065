#include "desk/answers.h"

#include "units/number_text.h"
#include "units/printing.h"
#include "units/reading.h"

#include <nlohmann/json.hpp>

#include <array>

namespace brimwright::desk {

using Json = nlohmann::ordered_json;

namespace {

/// To a hundredth.
double shown(double value) { return number_of(fixed(value, 2)).value(); }

Json sizes_json(const std::array<Length, 3>& size, Length unit) {
  Json sizes = Json::array();
  for (const Length length : size) sizes.push_back(shown(length / unit));
  return sizes;
}

Json choice_json(const Choice& choice) {
  Json json = Json::object();
  for (const auto& [member, value] : choice.answers)
    json[member] = value.empty() ? Json(true) : Json(value);
  if (!choice.size) return json;
  if (json.contains("unit")) {
    const Length unit = read_length("1 " + json["unit"].get<std::string>(), {"", "unit"});
    json["size"] = sizes_json(*choice.size, unit);
  }
  json["size_mm"] = sizes_json(*choice.size, millimetre);
  return json;
}

}  // namespace

HttpAnswer json_answer(const Json& json, int status) {
  return {.status = status,
          .body = json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n"};
}

HttpAnswer complaint(int status, const UserError::Parts& parts, const std::string& line,
                     const Asked& asked) {
  Json json = {{"complaint",
                {{"file", parts.file},
                 {"field", parts.field},
                 {"problem", parts.problem},
                 {"remedy", parts.remedy},
                 {"line", line}}}};
  if (!asked.member.empty()) json["complaint"]["asks"] = asked.member;
  for (const Choice& choice : asked.choices)
    json["complaint"]["choices"].push_back(choice_json(choice));
  const ComplaintFacts& facts = asked.facts;
  if (facts.is_lye_heavy) json["complaint"]["lye_heavy"] = true;
  if (facts.keeps)
    json["complaint"]["keep"] = {{"at", facts.keeps->at}, {"figure", facts.keeps->figure}};
  if (facts.entry) json["complaint"]["entry"] = *facts.entry;
  // Names of files need not be UTF-8.
  return {.status = status, .body = json.dump(-1, ' ', false, Json::error_handler_t::replace)};
}

HttpAnswer complaint(const UserError& error) { return complaint(422, error.parts(), error.what()); }

HttpAnswer refusal(int status, const std::string& field, const std::string& problem,
                   const std::string& remedy) {
  const UserError error({.file = "", .field = field, .problem = problem, .remedy = remedy});
  return complaint(status, error.parts(), error.what());
}

HttpAnswer fault(const std::string& line) {
  return complaint(500, {.file = "", .field = "", .problem = line, .remedy = ""}, line);
}

}  // namespace brimwright::desk
