#include "reports/blanks_json.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using When = planning::Blank::When;

std::string name_of(When when) {
  switch (when) {
    case When::day_before:
      return "day_before";
    case When::base_mixed:
      return "base_mixed";
    case When::poured:
      return "poured";
    case When::topping_mixed:
      return "topping_mixed";
    case When::whipped:
      return "whipped";
    case When::piped:
      return "piped";
    case When::afterwards:
      return "afterwards";
  }
  return "";
}

Json blank_json(const planning::Blank& blank) {
  Json json = {{"key", blank.key}};
  const auto add = [&](const char* key, const std::string& text) {
    if (!text.empty()) json[key] = text;
  };
  add("of", blank.of);
  json["words"] = blank.words;
  json["kind"] = planning::name_of(blank.kind);
  json["when"] = name_of(blank.when);
  add("unit", blank.unit);
  add("planned", blank.planned);
  add("least", blank.least);
  add("most", blank.most);
  add("not_above", blank.not_above);
  add("cup_holds", blank.cup_holds);
  add("cup_holds_key", blank.cup_holds_key);
  if (!blank.choices.empty()) json["choices"] = blank.choices;
  if (blank.batch) json["batch"] = *blank.batch;
  return json;
}

}  // namespace

Json blanks_json(const std::vector<planning::Blank>& blanks) {
  Json json = Json::array();
  for (const auto& blank : blanks) json.push_back(blank_json(blank));
  return json;
}

}  // namespace brimwright::reports
