#include "planning/hours_in_mould.h"

#include <algorithm>

namespace brimwright::planning {

std::optional<std::chrono::minutes> hours_in_mould(const Run& run) {
  auto longest = run.pour.formula.unmould_after;
  if (run.pipe && run.pipe->formula.unmould_after)
    longest = std::max(longest.value_or(std::chrono::minutes{}), *run.pipe->formula.unmould_after);
  return longest ? longest : run.pour.mould.unmould_after;
}

}  // namespace brimwright::planning
