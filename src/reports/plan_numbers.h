#pragma once

#include "reports/json_numbers.h"
#include "units/quantity.h"
#include "units/share.h"

namespace brimwright::reports {

// As the JSON of a plan shows quantities.
inline double grams(Mass mass) { return to_decimals(mass / gram, 3); }
inline double ml(Volume volume) { return to_decimals(volume / millilitre, 3); }
inline double mm(Length length) { return to_decimals(length / millimetre, 3); }
inline double per_cent(Share share) { return to_decimals(share.in_percent(), 2); }

}  // namespace brimwright::reports
