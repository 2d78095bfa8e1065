#include "learning/centre.h"

#include "learning/signed_rank.h"
#include "learning/walsh_averages.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace brimwright::learning {

Centre centre_of(std::vector<double> values) {
  assert(!values.empty());
  std::sort(values.begin(), values.end());
  const std::uint64_t averages = walsh_count(values.size());
  const double lower = walsh_average(values, (averages + 1) / 2);
  const double upper = averages % 2 == 1 ? lower : walsh_average(values, averages / 2 + 1);
  Centre centre{.value = std::midpoint(lower, upper),
                .count = values.size(),
                .low = values.front(),
                .high = values.back()};
  if (values.size() < fewest_for_interval) return centre;
  const auto bounds = signed_rank_bounds(values.size(), level_wanted);
  centre.low = walsh_average(values, bounds->rank);
  centre.high = walsh_average(values, averages + 1 - bounds->rank);
  centre.level = bounds->level;
  return centre;
}

}  // namespace brimwright::learning
