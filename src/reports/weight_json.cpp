#include "reports/weight_json.h"

#include "reports/json_numbers.h"
#include "units/weight_text.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace brimwright::reports {
namespace {

using Json = nlohmann::ordered_json;

/// To the milligram; alkali that a scale in ounces shows is cut there, never rounded up.
double grams(Mass mass, Rounded towards) {
  const double shown = to_decimals(mass / gram, 3);
  const bool is_above = shown > mass / gram + 1e-9;
  return towards == Rounded::down && is_above ? to_decimals(shown - 0.001, 3) : shown;
}

/// Hundredths of a per cent, outwards.
double lowest(Share share) { return std::floor(share.in_percent() * 100 + 1e-7) / 100; }
double highest(Share share) { return std::ceil(share.in_percent() * 100 - 1e-7) / 100; }

Json uncertainties_json(const chemistry::EffectiveSuperfat& superfat) {
  Json json = Json::array();
  for (const auto& uncertainty : superfat.uncertainties)
    json.push_back({{"cause", uncertainty.cause},
                    {"remedy", uncertainty.remedy},
                    {"percent_of_variance", to_decimals(uncertainty.of_variance.in_percent(), 1)}});
  return json;
}

}  // namespace

Json with_weight(Json json, const std::string& prefix, Mass mass, Mass step, Rounded towards) {
  const WeightText text = weight_text(mass, step, towards);
  json[prefix + "g"] = grams(mass, towards);
  json[prefix + "g_text"] = text.grams;
  json[prefix + "oz_text"] = text.ounces;
  json[prefix + "reads"] = reads_ounces(step) ? "oz" : "g";
  json[prefix + "scale_step_g"] = to_decimals(step / gram, 6);
  return json;
}

Json superfat_json(const chemistry::EffectiveSuperfat& superfat) {
  return {{"effective", to_decimals(superfat.nominal.in_percent(), 2)},
          {"low", lowest(superfat.low)},
          {"high", highest(superfat.high)},
          {"likely_low", lowest(superfat.likely_low)},
          {"likely_high", highest(superfat.likely_high)},
          {"likely_means", chemistry::likely_means()},
          {"likely_by_scales", to_decimals(superfat.likely_by_scales.in_percent(), 2)},
          {"uncertainties", uncertainties_json(superfat)}};
}

}  // namespace brimwright::reports
