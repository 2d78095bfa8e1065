#include "chemistry/heat_workings.h"

namespace brimwright::chemistry {

std::vector<Working> heat_workings(const HeatFindings& heat, const HeatQuestion& question,
                                   Share strength) {
  std::vector<Given> with = {
      {"strength", in_figures(strength)},
      {"water at", in_figures(heat.water_at), question.water_at ? "the run" : "as the room"},
      {heat.is_of_solution ? "solution at" : "alkali at", in_figures(heat.alkali_at),
       question.room_at ? "the run" : "assumed, as the run does not give it"}};
  if (question.ice_share > Share{})
    with.push_back({"of the plain water as ice", in_figures(question.ice_share), "the run"});
  with.push_back({"it boils at", in_figures(heat.peak.boiling)});
  if (!heat.is_peak_known) return {};
  std::vector<Working> all = {
      {.of = "peak_c",
       .formula = std::string("hottest lye solution: where its enthalpy is that of the cold water "
                              "and the ") +
                  (heat.is_of_solution ? "strong solution" : "dry alkali") +
                  " together, all at once in a pot that takes none of it",
       .with = with,
       .comes_to = in_figures(heat.peak.peak),
       .sources = {"NaOH: enthalpy and vapour pressure by Olsson, Jernqvist and Aly, Int. J. "
                   "Thermophysics 18 (1997)",
                   "KOH: heat of solution at infinite dilution (CRC Handbook), which is too warm, "
                   "never too cool"}}};
  if (heat.cooling.empty()) return all;
  std::vector<Given> cooled = {{"from", in_figures(heat.peak.peak)}};
  if (question.lye_used_at) cooled.push_back({"to", in_figures(*question.lye_used_at), "the run"});
  for (const CoolingTime& time : heat.cooling)
    cooled.push_back({"in " + name_of(time.where),
                      std::to_string(time.shortest.count()) + " to " +
                          std::to_string(time.longest.count()) + " min",
                      "around it " + in_figures(temperature_of(time.where))});
  all.push_back({.of = "cooling",
                 .formula = "cooling time = mass × heat capacity ÷ (U × area) × ln((from − around) "
                            "÷ (to − around)), from a stirred bath round metal to thick plastic "
                            "left alone",
                 .with = cooled,
                 .sources = {"U: 50 to 300 W/(m² K) in water, 5 to 20 in air, by published "
                             "coefficients of free convection; Newton's law of cooling"}});
  return all;
}

}  // namespace brimwright::chemistry
