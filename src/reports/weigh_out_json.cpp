#include "reports/weigh_out_json.h"

#include "reports/json_numbers.h"
#include "reports/text_mark.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <string>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;
using Role = WeighOutRow::Role;

std::string name_of(WeighOutRow::Role role) {
  switch (role) {
    case Role::fat:
      return "fat";
    case Role::alkali:
      return "alkali";
    case Role::water:
      return "water";
    case Role::ice:
      return "ice";
    case Role::liquid:
      return "liquid";
    case Role::additive:
      return "additive";
    case Role::fragrance:
      return "fragrance";
    case Role::colour:
      return "colour";
    case Role::batter:
      return "batter";
    case Role::lye_solution:
      return "lye_solution";
    case Role::melt:
      return "melt";
    case Role::powder:
      return "powder";
  }
  return "";
}

/// To the milligram; what is rounded down on the scale is never rounded up here.
double grams(Mass mass, Rounded towards = Rounded::nearest) {
  const double shown = to_decimals(mass / gram, 3);
  const bool is_above = shown > mass / gram + 1e-9;
  return towards == Rounded::down && is_above ? to_decimals(shown - 0.001, 3) : shown;
}

Json row_json(const WeighOutRow& row) {
  Json json = {{"key", row.key},
               {"name", row.name},
               {"role", name_of(row.role)},
               {"g", grams(row.mass, row.towards)},
               {"step_g", to_decimals(row.step / gram, 6)},
               {"shown", row.shown},
               {"beside", row.beside}};
  if (!row.note.empty()) json["note"] = row.note;
  if (!row.adding.empty()) json["adding"] = row.adding;
  if (row.running) {
    json["running_g"] = grams(*row.running);
    json["running_shown"] = row.running_shown;
  }
  return json;
}

Json vessel_json(const Vessel& vessel) {
  Json json = {{"key", vessel.key}};
  if (vessel.batter)
    json["batter"] = *vessel.batter == planning::BatterRole::base ? "pour" : "pipe";
  json["vessel"] = name_of(vessel.kind);
  json["title"] = vessel.title;
  if (vessel.times > 1) json["times"] = vessel.times;
  if (vessel.is_day_before) json["day_before"] = true;
  json["rows"] = Json::array();
  for (const WeighOutRow& row : vessel.rows) json["rows"].push_back(row_json(row));
  json["words"] = Json::array();
  for (const auto& words : vessel.words)
    json["words"].push_back({{"text", words.text}, {"is_order", words.is_order}});
  json["total_g"] = grams(vessel.total);
  json["total_shown"] = vessel.total_shown;
  return json;
}

}  // namespace

Json with_weigh_out(Json json, const std::vector<Vessel>& vessels) {
  Json list = Json::array();
  for (const Vessel& vessel : vessels) list.push_back(vessel_json(vessel));
  json["mark"] = text_mark(list.dump(-1, ' ', false, Json::error_handler_t::replace));
  json["weigh_out"] = std::move(list);
  return json;
}

}  // namespace brimwright::reports
