#pragma once

#include "units/quantity.h"
#include "units/share.h"

#include <string>
#include <variant>

namespace brimwright {

/// Volume for each unit of mass, as in "1 tsp/lb".
using SpecificVolume = Quantity<3, -1>;

/// What a dosing rate is a share of.
enum class RateBasis { fats, batter };

/// How much of an additive goes in: by mass ("2 % of fats", "8 g/kg of batter") or by the spoon
/// ("1 tsp/lb of fats"), which becomes a mass only with the powder's bulk density.
struct Rate {
  std::variant<Share, SpecificVolume> amount;
  RateBasis of = RateBasis::fats;
  std::string written = {};  ///< as it was typed; empty for one that was worked out
};

}  // namespace brimwright
