#include "learning/walsh_averages.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cstddef>
#include <limits>
#include <numeric>
#include <vector>

namespace brimwright::learning {
namespace {

/// Sums are twice the averages, and halving a double is exact.
struct Staircase {
  std::uint64_t up_to = 0;                                 // sums not above the guess
  double last = -std::numeric_limits<double>::infinity();  // the greatest of them
  double next = std::numeric_limits<double>::infinity();   // the least above it
};

Staircase staircase(std::span<const double> x, double guess) {
  Staircase stairs;
  std::size_t end = x.size();  // in row i the sums with j in [i, end) do not pass the guess
  for (std::size_t i = 0; i < x.size(); ++i) {
    while (end > i && x[i] + x[end - 1] > guess) --end;
    if (end < x.size()) stairs.next = std::min(stairs.next, x[i] + x[std::max(end, i)]);
    if (end <= i) break;
    stairs.last = std::max(stairs.last, x[i] + x[end - 1]);
    stairs.up_to += end - i;
  }
  return stairs;
}

std::vector<double> sums_between(std::span<const double> x, double low, double high) {
  std::vector<double> sums;
  std::size_t begin = x.size(), end = x.size();
  for (std::size_t i = 0; i < x.size(); ++i) {
    while (end > i && x[i] + x[end - 1] > high) --end;
    while (begin > i && x[i] + x[begin - 1] >= low) --begin;
    for (std::size_t j = std::max(i, begin); j < end; ++j) sums.push_back(x[i] + x[j]);
    if (end <= i) break;
  }
  return sums;
}

/// Doubles in their order, as whole numbers.
std::uint64_t place_of(double value) {
  const auto bits = std::bit_cast<std::uint64_t>(value);
  constexpr std::uint64_t sign = std::uint64_t{1} << 63U;
  return (bits & sign) != 0 ? ~bits : bits | sign;
}
double at_place(std::uint64_t place) {
  constexpr std::uint64_t sign = std::uint64_t{1} << 63U;
  return std::bit_cast<double>((place & sign) != 0 ? place & ~sign : ~place);
}

/// What is known of the sum of a wanted rank: it lies in [low, high], with `before` sums below low
/// and `up_to` not above high.
struct Bracket {
  double low, high;
  std::uint64_t before, up_to;

  double at(double share) const { return low + share * (high - low); }
};

constexpr int guesses_by_value = 40;

/// A guess in [low, high). Sums are as dense here as there, or nearly, so that what share of them
/// lies below tells where to guess: a little to one side of the rank and then to the other, for the
/// bracket to close from both. Each third guess halves, and when one value lies far out the last 64
/// do so by the place among the doubles, which finds any.
double guess_in(const Bracket& bracket, std::uint64_t rank, std::size_t count, int guesses) {
  double guess = at_place(std::midpoint(place_of(bracket.low), place_of(bracket.high)));
  if (guesses < guesses_by_value) {
    const auto inside = static_cast<double>(bracket.up_to - bracket.before);
    const double aside = guesses % 3 == 0 ? -1 : 1;
    const double wanted =
        static_cast<double>(rank - bracket.before) + aside * static_cast<double>(count);
    guess = bracket.at(guesses % 3 == 2 ? 0.5 : std::clamp(wanted / inside, 0.0, 1.0));
  }
  return guess >= bracket.low && guess < bracket.high ? guess : bracket.low;
}

}  // namespace

double walsh_average(std::span<const double> ascending, std::uint64_t rank) {
  const std::uint64_t few = 4 * ascending.size();
  assert(rank >= 1 && rank <= walsh_count(ascending.size()));
  Bracket bracket{2 * ascending.front(), 2 * ascending.back(), 0, walsh_count(ascending.size())};
  for (int guesses = 0; bracket.up_to - bracket.before > few && bracket.low < bracket.high;
       ++guesses) {
    const Staircase stairs =
        staircase(ascending, guess_in(bracket, rank, ascending.size(), guesses));
    if (stairs.up_to >= rank) {
      bracket.high = stairs.last;
      bracket.up_to = stairs.up_to;
    } else {
      bracket.low = stairs.next;
      bracket.before = stairs.up_to;
    }
  }
  if (bracket.low == bracket.high) return bracket.low / 2;
  std::vector<double> sums = sums_between(ascending, bracket.low, bracket.high);
  const auto wanted = sums.begin() + static_cast<std::ptrdiff_t>(rank - bracket.before - 1);
  std::nth_element(sums.begin(), wanted, sums.end());
  return *wanted / 2;
}

}  // namespace brimwright::learning
