#include "learning/drying_fit.h"

#include "learning/rate_fit.h"

#include <algorithm>
#include <cmath>

namespace brimwright::learning {
namespace {

// Time constants that are told from the two extremes, as planning::fitted has them: a twentieth of
// the first gap, when all is lost before the second weighing, to three times the whole time, when
// what is seen is a straight line.
constexpr double shortest_of_gap = 1.0 / 20, longest_of_span = 3;
constexpr std::size_t grid = 12;

}  // namespace

std::variant<planning::CureCurve, NoCurve> drying_curve(std::span<const CureWeighing> weighings) {
  if (!can_be_fitted(weighings)) return NoCurve::too_few;
  const double span = weighings.back().day - weighings.front().day;
  const double shortest = std::log(shortest_of_gap * (weighings[1].day - weighings[0].day));
  const double longest = std::log(longest_of_span * span);
  const auto log_at = [&](std::size_t i) {
    return shortest + (longest - shortest) * static_cast<double>(i) / double{grid};
  };
  const auto squares = [&](double log_tau) {
    return fit_of_rate(weighings, std::exp(-log_tau)).squares;
  };
  std::size_t best = 0;
  double least_squares = squares(log_at(0));
  for (std::size_t i = 1; i <= grid; ++i)
    if (const double found = squares(log_at(i)); found < least_squares)
      best = i, least_squares = found;
  if (!(fit_of_rate(weighings, std::exp(-log_at(best))).slope > 0)) return NoCurve::never_lighter;
  if (best == grid) return NoCurve::straight;
  if (best == 0) return NoCurve::all_at_once;
  const double log_tau = least_between(log_at(best - 1), log_at(best + 1), squares);
  const RateFit fit = fit_of_rate(weighings, std::exp(-log_tau));
  return planning::CureCurve{.end = fit.mass_at(1 / fit.rate) * gram,
                             .to_lose = fit.slope / fit.rate * gram,
                             .tau_days = 1 / fit.rate};
}

}  // namespace brimwright::learning
