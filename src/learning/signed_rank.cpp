#include "learning/signed_rank.h"

#include "learning/quantiles.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace brimwright::learning {
namespace {

std::optional<SignedRankBounds> counted_bounds(std::size_t n, double wanted) {
  const std::vector<double> patterns = sign_patterns(n);
  const double all = std::exp2(static_cast<double>(n));
  double below = 0;  // patterns whose sum is less than the rank
  std::optional<SignedRankBounds> bounds;
  for (std::size_t rank = 1; 2 * rank <= patterns.size(); ++rank) {
    below += patterns[rank - 1];
    const double level = 1 - 2 * below / all;
    if (level < wanted) break;
    bounds = {rank, level};
  }
  return bounds;
}

double normal_probability_below(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

SignedRankBounds approximate_bounds(std::size_t n, double wanted) {
  const auto count = static_cast<double>(n);
  const double mean = count * (count + 1) / 4;
  const double deviation = std::sqrt(count * (count + 1) * (2 * count + 1) / 24);
  // P(T <= k - 1) is about that of a normal number below k - 1/2.
  const double z = normal_quantile((1 - wanted) / 2);
  const double rank = std::floor(mean + z * deviation + 0.5);
  return {static_cast<std::uint64_t>(rank),
          1 - 2 * normal_probability_below((rank - 0.5 - mean) / deviation)};
}

}  // namespace

std::vector<double> sign_patterns(std::size_t n) {
  assert(n <= most_counted);
  std::vector<double> patterns(n * (n + 1) / 2 + 1, 0);
  patterns[0] = 1;
  std::size_t largest = 0;
  for (std::size_t rank = 1; rank <= n; ++rank) {
    largest += rank;
    for (std::size_t sum = largest; sum >= rank; --sum) patterns[sum] += patterns[sum - rank];
  }
  return patterns;
}

std::optional<SignedRankBounds> signed_rank_bounds(std::size_t n, double wanted) {
  assert(wanted > 0 && wanted < 1);
  return n <= most_counted ? counted_bounds(n, wanted) : approximate_bounds(n, wanted);
}

}  // namespace brimwright::learning
