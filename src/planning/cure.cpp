#include "planning/cure.h"

#include "units/printing.h"
#include "units/share_of.h"
#include "units/wording.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brimwright::planning {
namespace {

using chemistry::CureWeighing;

double days(std::chrono::minutes time) { return static_cast<double>(time.count()) / (24 * 60); }

void refuse_what_does_not_fall(const std::vector<CureWeighing>& weighings, const Place& where) {
  if (weighings.size() < 3)
    throw UserError(where, "has " + std::to_string(weighings.size()) + " of the 3 weighings needed",
                    "weigh the piece at least three times while it cures");
  for (std::size_t i = 1; i < weighings.size(); ++i)
    if (weighings[i].mass > weighings[i - 1].mass)
      throw UserError({where.file, where.field + "/" + std::to_string(i) + "/mass"},
                      "a weighing is " + trimmed(weighings[i].mass / gram, 2) +
                          " g, more than the " + trimmed(weighings[i - 1].mass / gram, 2) +
                          " g before it",
                      "a curing piece only gets lighter; leave out the weighing that is wrong");
  if (!(weighings.back().mass < weighings.front().mass))
    throw UserError(where, "these weighings never get lighter",
                    "weigh on a finer scale, or for longer");
}

struct Candidate {
  CureCurve curve;
  double squares = std::numeric_limits<double>::infinity();  // g2, about the curve
};

/// The best line of mass over x = exp(-t / tau) for one tau.
Candidate best_for(double tau_days, const std::vector<CureWeighing>& weighings) {
  const auto n = static_cast<double>(weighings.size());
  const auto x_of = [&](const CureWeighing& w) { return std::exp(-w.day / tau_days); };
  double x_mean = 0, m_mean = 0;
  for (const auto& w : weighings) {
    x_mean += x_of(w) / n;
    m_mean += w.mass / gram / n;
  }
  double xx = 0, xm = 0;
  for (const auto& w : weighings) {
    xx += std::pow(x_of(w) - x_mean, 2);
    xm += (x_of(w) - x_mean) * (w.mass / gram - m_mean);
  }
  const double slope = xm / xx;
  Candidate candidate{{(m_mean - slope * x_mean) * gram, slope * gram, tau_days}, 0};
  for (const auto& w : weighings)
    candidate.squares += std::pow((w.mass - candidate.curve.on_day(w.day)) / gram, 2);
  return candidate;
}

/// Golden section on the logarithm of tau, between `low` and `high`.
Candidate narrowed(double low, double high, const std::vector<CureWeighing>& weighings) {
  const double golden = (std::sqrt(5.0) - 1) / 2;
  const auto at = [&](double log_tau) { return best_for(std::exp(log_tau), weighings); };
  double a = std::log(low), b = std::log(high);
  double x1 = b - golden * (b - a), x2 = a + golden * (b - a);
  Candidate c1 = at(x1), c2 = at(x2);
  // 60 steps shrink the bracket below what a double can tell.
  for (int step = 0; step < 60; ++step) {
    if (c1.squares < c2.squares) {
      b = x2, x2 = x1, c2 = c1;
      x1 = b - golden * (b - a);
      c1 = at(x1);
    } else {
      a = x1, x1 = x2, c1 = c2;
      x2 = a + golden * (b - a);
      c2 = at(x2);
    }
  }
  return c1.squares < c2.squares ? c1 : c2;
}

/// Time constants worth trying: from a twentieth of the first gap, when all is lost before the
/// second weighing, to three times the whole time, when what is seen is a straight line.
constexpr double shortest_of_gap = 1.0 / 20, longest_of_span = 3;
constexpr int grid = 200;

CureCurve share_of_water(const CureCurve& weighed, Mass fresh, Mass water, const Place& where) {
  const double lost = weighed.to_lose / weighed.fresh();  // of its weight when fresh
  const Mass to_lose = lost * fresh;
  if (to_lose > water)
    throw UserError(where,
                    "these weighings tend to a loss of " + trimmed(100 * lost, 1) +
                        " % of the weight, more than the batter's water of " +
                        in_percent(Share::of_one(water / fresh)),
                    "check the weighings and their days, counted from the pour");
  return {fresh - to_lose, to_lose, weighed.tau_days};
}

}  // namespace

Mass CureCurve::on_day(double day) const { return end + to_lose * std::exp(-day / tau_days); }

CureFit fitted(const std::vector<CureWeighing>& weighings, const Place& where) {
  refuse_what_does_not_fall(weighings, where);
  const double span = weighings.back().day - weighings.front().day;
  const double low = shortest_of_gap * (weighings[1].day - weighings[0].day);
  const double high = longest_of_span * span;
  const auto tau_at = [&](int i) { return low * std::pow(high / low, i / double{grid}); };
  int best = 0;
  for (int i = 1; i <= grid; ++i)
    if (best_for(tau_at(i), weighings).squares < best_for(tau_at(best), weighings).squares)
      best = i;
  if (best == grid)
    throw UserError(
        where, "these weighings fall in a straight line, which does not show where the loss ends",
        "go on weighing for some weeks, until the loss slows down, or give what is lost in the end "
        "and how fast");
  if (best == 0)
    throw UserError(where,
                    "these weighings lose all before the second one, which does not show how fast",
                    "add weighings from the first days");
  CureFit fit{narrowed(tau_at(best - 1), tau_at(best + 1), weighings).curve, weighings.size(), {}};
  const auto freedom = static_cast<double>(weighings.size()) - 3;
  if (freedom > 0)
    fit.spread = std::sqrt(best_for(fit.curve.tau_days, weighings).squares / freedom) * gram;
  return fit;
}

std::optional<PartCure> cure_of(const chemistry::Formula& formula, Mass fresh, Mass water) {
  if (!formula.drying) {
    if (!formula.water_lost_in_cure) return std::nullopt;
    return PartCure{fresh, fresh - *formula.water_lost_in_cure * water, {}, {}};
  }
  PartCure cure{.fresh = fresh, .cured = {}, .curve = {}, .fit = {}};
  if (const auto* law = std::get_if<chemistry::DryingLaw>(&*formula.drying)) {
    const Mass to_lose = law->water_lost_in_the_end * water;
    cure.curve = CureCurve{fresh - to_lose, to_lose, law->time_constant_days};
  } else {
    const Place where{formula.file, "/drying/weighings"};
    cure.fit = fitted(std::get<std::vector<CureWeighing>>(*formula.drying), where);
    cure.curve = share_of_water(cure.fit->curve, fresh, water, where);
  }
  cure.cured = cure.curve->on_day(days(*formula.cure));  // read_drying refuses one without a cure
  return cure;
}

}  // namespace brimwright::planning
