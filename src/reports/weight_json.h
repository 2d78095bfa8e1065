#pragma once

#include "chemistry/superfat.h"
#include "units/quantity.h"
#include "units/rounded_text.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace brimwright::reports {

/// `json` with a weight: "<prefix>g" in grams; "<prefix>g_text" and "<prefix>oz_text", as it is
/// shown beside a scale of that step (weight_text.h); "<prefix>reads", "g" or "oz", what the scale
/// shows; "<prefix>scale_step_g". Grams rounded down keep to the safe side too.
nlohmann::ordered_json with_weight(nlohmann::ordered_json json, const std::string& prefix,
                                   Mass mass, Mass step, Rounded towards);

/// The superfat as it comes out, in per cent: ends of a range never rounded towards its middle.
nlohmann::ordered_json superfat_json(const chemistry::EffectiveSuperfat& superfat);

}  // namespace brimwright::reports
