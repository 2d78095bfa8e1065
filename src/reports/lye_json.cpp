#include "reports/json_numbers.h"
#include "reports/lye_report.h"

#include <nlohmann/json.hpp>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

double grams(Mass mass) { return to_decimals(mass / gram, 3); }
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
          {"peak_c", celsius(heat.peak.peak)},
          {"boils_at_c", celsius(heat.peak.boiling)},
          {"cooling", cooling},
          {"at_pour_c", heat.at_pour ? Json(celsius(*heat.at_pour)) : Json(nullptr)}};
}

Json lye_pot_json(const planning::Plan& plan) {
  if (!plan.lye_pot) return nullptr;
  const auto& pot = *plan.lye_pot;
  Json alkalis = Json::array(), shares = Json::array();
  for (const auto& alkali : pot.alkalis)
    alkalis.push_back({{"name", alkali.name}, {"g", grams(alkali.weighed)}});
  for (const auto& share : pot.shares)
    shares.push_back({{"batter", share.batter},
                      {"lye_g", grams(share.lye)},
                      {"top_up_g", grams(share.top_up)},
                      {"superfat_percent", to_decimals(share.superfat.in_percent(), 2)}});
  return {{"alkalis", alkalis},
          {"water_g", grams(pot.water)},
          {"lye_g", grams(pot.lye)},
          {"strength_percent", to_decimals(pot.strength.in_percent(), 2)},
          {"full_pot_g", pot.full_pot ? Json(grams(*pot.full_pot)) : Json(nullptr)},
          {"shares", shares}};
}

}  // namespace brimwright::reports
