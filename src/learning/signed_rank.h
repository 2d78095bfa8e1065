#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace brimwright::learning {

/// Up to so many values the distribution of the signed-rank statistic is counted out, exactly: all
/// sign patterns of 50 values, 2^50, are still whole numbers of a double.
inline constexpr std::size_t most_counted = 50;

/// How many of the 2^n sign patterns of the ranks 1 to n give each sum of positive ranks, from 0 to
/// n(n+1)/2: the distribution of Wilcoxon's signed-rank statistic. `n` is at most `most_counted`.
std::vector<double> sign_patterns(std::size_t n);

/// Which Walsh averages bound the centre of symmetry of n values.
struct SignedRankBounds {
  std::uint64_t rank;  // from either end, 1 the outermost
  double level;        // how often an interval between them holds the centre
};

/// The narrowest interval between the k-th Walsh averages from either end that holds the centre at
/// least as often as `wanted`, whatever symmetric and continuous law the values come from (Tukey's
/// interval; Hollander and Wolfe, Nonparametric Statistical Methods, section 3.3; from memory):
///
///   level = 1 - 2 P(T <= k - 1)
///
/// with T the signed-rank statistic: counted out up to `most_counted`, above by the normal
/// approximation with a correction for continuity, whose `level` is then as approximate. Nothing
/// where n is too small for that: under 6 for 95 %, since the widest of 5 values reaches 1 - 2/32.
std::optional<SignedRankBounds> signed_rank_bounds(std::size_t n, double wanted);

}  // namespace brimwright::learning
