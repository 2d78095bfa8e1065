#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace brimwright::learning {

/// From so many values on there is an interval: fewer cannot reach 95 % (signed_rank.h).
inline constexpr std::size_t fewest_for_interval = 6;
inline constexpr double level_wanted = 0.95;

/// Where values lie, robustly, and how far that is known. Of no unit of its own.
struct Centre {
  double value = 0;
  std::size_t count = 0;
  double low = 0, high = 0;
  /// How often an interval [low, high] holds the true centre, at least `level_wanted`; nothing
  /// below six values, where low and high are the least and the greatest of them.
  std::optional<double> level = {};
};

/// The Hodges-Lehmann estimate, the median of the Walsh averages (Hodges and Lehmann, Annals of
/// Mathematical Statistics 34, 1963, 598-611; from memory): up to 29 % of the values may be wrong
/// without carrying it away. With Wilcoxon's signed-rank interval from six values on. It relies on
/// values that are independent and scatter evenly to both sides. `values` are finite and not none,
/// in any order.
Centre centre_of(std::vector<double> values);

}  // namespace brimwright::learning
