#include "planning/scales.h"

#include "units/rounding.h"

#include <algorithm>

namespace brimwright::planning {

OnScale on_large_scale(const Scales& scales, Mass mass) {
  return {scales.large.step, std::max<std::int64_t>(1, whole_up(mass / scales.large.most))};
}

OnScale on_fine_scale(const Scales& scales, Mass mass) {
  if (mass <= scales.fine.most) return {scales.fine.step, 1};
  return on_large_scale(scales, mass);
}

}  // namespace brimwright::planning
