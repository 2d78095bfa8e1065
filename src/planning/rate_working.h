#pragma once

#include "units/quantity.h"
#include "units/rate.h"
#include "units/working.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// A dosing rate in the working of what is weighed by it.
struct RateWorking {
  std::string factor;        ///< "2 %", or by the spoon "10.87 ml/kg × 0.6 g/ml"
  std::vector<Given> given;  ///< the factor, and the rate as it was typed where that is another
};

/// `bulk_density` is there where the rate is by the spoon; `from` says where the rate stands.
RateWorking rate_working(const Rate& rate, const std::optional<Density>& bulk_density,
                         const std::string& from);

}  // namespace brimwright::planning
