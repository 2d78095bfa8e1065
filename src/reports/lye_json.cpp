#include "reports/json_numbers.h"
#include "reports/lye_report.h"
#include "reports/weight_json.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

double celsius(Temperature t) { return to_decimals(t.celsius(), 1); }

}  // namespace

Json heat_json(const chemistry::HeatFindings& heat) {
  Json cooling = Json::array();
  for (const auto& time : heat.cooling)
    cooling.push_back({{"in", chemistry::name_of(time.where)},
                       {"shortest_min", time.shortest.count()},
                       {"longest_min", time.longest.count()}});
  return {{"water_at_c", celsius(heat.water_at)},
          {"assumed", heat.assumed},
          {"peak_c", heat.is_peak_known ? Json(celsius(heat.peak.peak)) : Json(nullptr)},
          {"boils_at_c", celsius(heat.peak.boiling)},
          {"cooling", cooling},
          {"at_pour_c", heat.at_pour ? Json(celsius(*heat.at_pour)) : Json(nullptr)}};
}

Json pot_json(const planning::LyePot& pot, const std::optional<chemistry::HeatFindings>& heat) {
  Json alkalis = Json::array(), shares = Json::array();
  for (const auto& alkali : pot.alkalis)
    alkalis.push_back(
        with_weight({{"name", alkali.name}}, "", alkali.weighed, alkali.step, Rounded::down));
  for (const auto& share : pot.shares) {
    Json json = {{"batter", share.batter}};
    json = with_weight(json, "lye_", share.lye, pot.share_step, Rounded::down);
    json = with_weight(json, "top_up_", share.top_up, share.top_up_step, Rounded::nearest);
    json["superfat_percent"] = to_decimals(share.superfat.nominal.in_percent(), 2);
    json["superfat"] = superfat_json(share.superfat);
    shares.push_back(json);
  }
  Json json = with_weight(Json::object(), "water_", pot.water, pot.water_step, Rounded::nearest);
  json["alkalis"] = alkalis;
  json = with_weight(json, "lye_", pot.lye, pot.lye_step, Rounded::up);
  json["strength_percent"] = to_decimals(pot.strength.in_percent(), 2);
  if (pot.full_pot)
    json = with_weight(json, "full_pot_", *pot.full_pot, pot.lye_step, Rounded::up);
  else
    json["full_pot_g"] = nullptr;
  json = with_weight(json, "left_", pot.left, pot.share_step, Rounded::nearest);
  json["shares"] = shares;
  json["heat"] = heat ? heat_json(*heat) : Json(nullptr);
  return json;
}

Json lye_pot_json(const planning::Batch& batch) {
  return batch.lye_pot ? pot_json(*batch.lye_pot, batch.pot_heat) : Json(nullptr);
}

}  // namespace brimwright::reports
