#include "planning/additive_limits.h"

#include "planning/cure.h"
#include "units/printing.h"

#include <cassert>
#include <cmath>

namespace brimwright::planning {
namespace {

using chemistry::Additive;
using chemistry::Formula;

/// A rate or limit as a share of its basis.
Share share_of(const Rate& rate, const Additive& additive) {
  if (const auto* share = std::get_if<Share>(&rate.amount)) return *share;
  assert(additive.bulk_density);  // read_formula refuses a spoon without it
  return Share::of_one((std::get<SpecificVolume>(rate.amount) * *additive.bulk_density).base());
}

/// Grams of finished soap for each gram of fats.
std::optional<double> cured_per_fat(const Formula& formula, const chemistry::Proportions& per_fat) {
  const double water = per_fat.water + per_fat.water_in_liquids + per_fat.water_in_solutions +
                       per_fat.water_in_acids;
  const auto cure = cure_of(formula, per_fat.batter * gram, water * gram);
  return cure ? std::optional(cure->cured / gram) : std::nullopt;
}

/// Digits after the point that show a percentage to a hundredth of itself, but at least two.
int decimals_for_rate(double in_percent) {
  int decimals = 2;
  while (decimals < 6 && in_percent * std::pow(10, decimals) < 100) ++decimals;
  return decimals;
}

/// A formula in which one additive's rate can be turned.
class Trial {
 public:
  Trial(const Formula& formula, std::size_t additive) : formula_(formula), at_(additive) {}

  bool keeps_within(Share rate) {
    formula_.additives[at_].rate.amount = rate;
    return !is_above(*used_of_limited(formula_, chemistry::proportions(formula_), at_),
                     allowed_of_limited(formula_.additives[at_]));
  }
  double per_fat(Share rate) {
    formula_.additives[at_].rate.amount = rate;
    return chemistry::proportions(formula_).additives[at_];
  }

 private:
  Formula formula_;
  std::size_t at_;
};

/// What is used grows with the rate: halved 60 times, which is all that a double can tell.
Share highest_within(Trial& trial, Share too_much) {
  Share within;
  for (int i = 0; i < 60; ++i) {
    const Share middle = 0.5 * (within + too_much);
    (trial.keeps_within(middle) ? within : too_much) = middle;
  }
  return within;
}

}  // namespace

bool is_above(Share used, Share most) { return used.of_one() > most.of_one() * (1 + 1e-9); }

std::optional<Share> used_of_limited(const Formula& formula, const chemistry::Proportions& per_fat,
                                     std::size_t additive) {
  const Additive& limited = formula.additives[additive];
  if (!limited.limit && !limited.limit_of_finished_soap) return std::nullopt;
  const double used = per_fat.additives[additive];
  if (limited.limit_of_finished_soap) {
    const auto cured = cured_per_fat(formula, per_fat);
    return cured ? std::optional(Share::of_one(used / *cured)) : std::nullopt;
  }
  return Share::of_one(limited.limit->of == RateBasis::fats ? used : used / per_fat.batter);
}

Share allowed_of_limited(const Additive& additive) {
  if (additive.limit_of_finished_soap) return *additive.limit_of_finished_soap;
  return share_of(*additive.limit, additive);
}

std::string limited_mass(const Additive& additive) {
  if (additive.limit_of_finished_soap) return "finished soap";
  return additive.limit->of == RateBasis::fats ? "fats" : "batter";
}

std::optional<AllowedRate> allowed_rate(const Formula& formula, std::size_t additive) {
  const Additive& limited = formula.additives[additive];
  Trial trial(formula, additive);
  const double most = highest_within(trial, share_of(limited.rate, limited)).in_percent();
  const int decimals = decimals_for_rate(most);
  const double digit = std::pow(10, -decimals);
  // The last digit may stand a hair below what was typed as the limit itself: 3 % is not 2.99 %.
  double percents = std::floor(most / digit + 1e-6) * digit;
  while (percents > digit / 2 && !trial.keeps_within(percents * percent)) percents -= digit;
  if (percents < digit / 2) return std::nullopt;
  const bool of_fats = limited.rate.of == RateBasis::fats;
  return AllowedRate{trimmed(percents, decimals) + (of_fats ? " % of fats" : " % of batter"),
                     trial.per_fat(percents * percent)};
}

}  // namespace brimwright::planning
