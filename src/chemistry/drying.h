#pragma once

#include "units/fields.h"
#include "units/quantity.h"
#include "units/share.h"

#include <optional>
#include <variant>
#include <vector>

namespace brimwright::chemistry {

/// How a batter's water leaves: `water_lost_in_the_end` of it in the end, 1 - 1/e of that after one
/// time constant.
struct DryingLaw {
  Share water_lost_in_the_end;
  double time_constant_days;
};

/// What one plain piece of a batter, or the mean of several, weighed so many days after the pour.
struct CureWeighing {
  double day;
  Mass mass;
};

using Drying = std::variant<DryingLaw, std::vector<CureWeighing>>;

/// A formula's "drying": { "water_lost_in_the_end", "time_to_63_percent" } or { "weighings": [ {
/// "after", "mass" } ] } in order of time. Nothing when it is absent: no drying is assumed.
/// UserError when it says both, when the weighings are fewer than three or not in order of time, or
/// when the formula says no "cure" to reckon for or also says "water_lost_in_cure".
std::optional<Drying> read_drying(const Fields& formula);

}  // namespace brimwright::chemistry
