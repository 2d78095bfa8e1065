#include "learning/drying_fit.h"
#include "learning/quantiles.h"
#include "learning/rate_fit.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <vector>

namespace brimwright::learning {
namespace {

using Weighings = std::span<const CureWeighing>;

/// Time constants from where all weighings but the first are alike to where a curve is hardly told
/// from a straight line, as logarithms.
struct Slowness {
  double shortest, longest;
};
Slowness slowness_of(Weighings weighings) {
  const double span = weighings.back().day - weighings.front().day;
  return {std::log((weighings[1].day - weighings[0].day) / 20), std::log(1000 * span)};
}

std::vector<double> steps_between(double from, double to, int steps) {
  std::vector<double> all;
  for (int i = 0; i <= steps; ++i) all.push_back(from + (to - from) * i / steps);
  return all;
}

/// Time constants of curves that the weighings allow, as logarithms.
struct Allowed {
  double from, to;
  bool is_straight_too;
  double most_squares;
};

std::optional<Allowed> allowed_by(Weighings weighings) {
  const auto squares = [&](double log_tau) {
    return fit_of_rate(weighings, std::exp(-log_tau)).squares;
  };
  const Slowness slowness = slowness_of(weighings);
  const std::vector<double> grid = steps_between(slowness.shortest, slowness.longest, 160);
  std::vector<double> found;
  for (const double log_tau : grid) found.push_back(squares(log_tau));
  const auto best =
      static_cast<std::size_t>(std::min_element(found.begin(), found.end()) - found.begin());
  if (!(fit_of_rate(weighings, std::exp(-grid[best])).slope > 0)) return std::nullopt;
  const double best_log = least_between(grid[best == 0 ? 0 : best - 1],
                                        grid[std::min(best + 1, grid.size() - 1)], squares);
  const double freedom = static_cast<double>(weighings.size()) - 3;
  const double most = std::min(found[best], squares(best_log)) *
                      (1 + f_quantile_of_one_and(freedom, level_of_masses) / freedom);

  const auto is_allowed = [&](double value) { return value <= most; };
  const auto end_between = [&](double inside, double outside) {
    for (int step = 0; step < 60; ++step) {
      const double middle = (inside + outside) / 2;
      (is_allowed(squares(middle)) ? inside : outside) = middle;
    }
    return inside;
  };
  auto first = static_cast<std::size_t>(std::find_if(found.begin(), found.end(), is_allowed) -
                                        found.begin());
  auto last = grid.size() - 1 -
              static_cast<std::size_t>(std::find_if(found.rbegin(), found.rend(), is_allowed) -
                                       found.rbegin());
  const bool is_any = first < grid.size();  // a narrow range may lie between two steps
  const double low = is_any ? std::min(grid[first], best_log) : best_log;
  const double high = is_any ? std::max(grid[last], best_log) : best_log;
  const auto before = std::lower_bound(grid.begin(), grid.end(), low);
  const auto after = std::upper_bound(grid.begin(), grid.end(), high);
  return Allowed{before == grid.begin() ? low : end_between(low, *std::prev(before)),
                 after == grid.end() ? high : end_between(high, *after),
                 is_allowed(fit_of_rate(weighings, 0).squares), most};
}

struct Reach {
  double low = std::numeric_limits<double>::infinity(), high = -low;
};

/// What masses a curve of one rate reaches when it may be off by so much. They are linear in it:
/// about the best one the squares grow as (mass - best)^2 / variance.
Reach reach_of(const RateFit& fit, double z, double most_squares, double count) {
  const double variance = 1 / count + (z - fit.z_mean) * (z - fit.z_mean) / fit.zz;
  const double away = std::sqrt(variance * std::max(0.0, most_squares - fit.squares));
  return {fit.mass_at(z) - away, fit.mass_at(z) + away};
}

/// The least and the greatest mass that any allowed curve reaches; `z_of` tells how far the piece
/// has dried, at a rate.
Reach reach_of_all(Weighings weighings, const Allowed& allowed,
                   const std::function<double(double)>& z_of) {
  const auto reach = [&](double log_tau) {
    const double rate = std::exp(-log_tau);
    const RateFit fit = fit_of_rate(weighings, rate);
    return reach_of(fit, z_of(rate), allowed.most_squares, static_cast<double>(weighings.size()));
  };
  const auto low = [&](double log_tau) { return reach(log_tau).low; };
  const auto minus_high = [&](double log_tau) { return -reach(log_tau).high; };
  const std::vector<double> steps = steps_between(allowed.from, allowed.to, 48);
  const auto least = [&](const std::function<double(double)>& f) {
    std::vector<double> found;
    for (const double step : steps) found.push_back(f(step));
    const auto best =
        static_cast<std::size_t>(std::min_element(found.begin(), found.end()) - found.begin());
    const double where = least_between(steps[best == 0 ? 0 : best - 1],
                                       steps[std::min(best + 1, steps.size() - 1)], f);
    return std::min(found[best], f(where));
  };
  return {least(low), -least(minus_high)};
}

bool are_enough(Weighings weighings) {
  return weighings.size() >= fewest_weighings_for_interval && can_be_fitted(weighings);
}

}  // namespace

std::optional<MassInterval> mass_on_day(Weighings weighings, double day) {
  if (!are_enough(weighings)) return std::nullopt;
  const auto allowed = allowed_by(weighings);
  if (!allowed) return std::nullopt;
  Reach reach = reach_of_all(weighings, *allowed, [&](double rate) { return worn(rate, day); });
  if (allowed->is_straight_too) {
    const Reach straight = reach_of(fit_of_rate(weighings, 0), day, allowed->most_squares,
                                    static_cast<double>(weighings.size()));
    reach = {std::min(reach.low, straight.low), std::max(reach.high, straight.high)};
  }
  return MassInterval{reach.low * gram, reach.high * gram, level_of_masses};
}

std::optional<MassInterval> mass_in_the_end(Weighings weighings) {
  if (!are_enough(weighings)) return std::nullopt;
  const auto allowed = allowed_by(weighings);
  if (!allowed) return std::nullopt;
  const Reach reach = reach_of_all(weighings, *allowed, [](double rate) { return 1 / rate; });
  MassInterval interval{reach.low * gram, reach.high * gram, level_of_masses};
  if (allowed->is_straight_too) interval.low.reset();
  return interval;
}

}  // namespace brimwright::learning
