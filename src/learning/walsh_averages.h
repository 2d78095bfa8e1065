#pragma once

#include <cstdint>
#include <span>

namespace brimwright::learning {

/// How many Walsh averages `n` values have: of each two of them, and of each with itself.
constexpr std::uint64_t walsh_count(std::uint64_t n) { return n * (n + 1) / 2; }

/// The one of that `rank` (1 the least) among the Walsh averages (x_i + x_j) / 2, i <= j, of finite
/// values in ascending order, to the last digit.
///
/// Their matrix, sorted along rows and columns, is never written down: each guess is counted along
/// its staircase in n steps, and the bracket always ends on averages that exist, so that equal ones
/// end the search. A handful of guesses as a rule, and never more than 104.
double walsh_average(std::span<const double> ascending, std::uint64_t rank);

}  // namespace brimwright::learning
