#include "planning/lye_mend.h"

#include "chemistry/fat_blend.h"
#include "chemistry/lye_need.h"
#include "planning/scales.h"
#include "planning/weighing.h"
#include "units/rounding.h"
#include "units/share_of.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace brimwright::planning {
namespace {

using chemistry::Formula;

double pure_share(const Formula& formula, const Ingredient& alkali) {
  return formula.alkalis[alkali.index].purity.of_one();
}

/// The water that solutions bring now, as they were weighed.
void settle_solutions(Weighing& weighing, const Formula& formula) {
  Mass in_solutions;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == Role::alkali && formula.alkalis[i.index].solution)
      in_solutions += i.weighed * (1 - pure_share(formula, i));
  weighing.water += in_solutions - weighing.water_in_solutions;
  weighing.water_in_solutions = in_solutions;
}

/// Sums, lye and superfat of what now stands in `weighing`'s ingredients; plain water is as it was.
void settle(Weighing& weighing, const Formula& formula) {
  const double pot = weighing.pot_strength.of_one(), lye = weighing.lye_strength.of_one();
  // What the two strengths told of water in the pot, from the alkali that was planned.
  const double pot_water_of_lye_water = (1 / pot - 1) / (1 / lye - 1);
  settle_solutions(weighing, formula);
  const Mass water = weighing.water + weighing.water_in_acids;
  weighing.batter = weighing.fats = weighing.naoh = weighing.koh = Mass{};
  Mass pure;
  for (const Ingredient& i : weighing.ingredients) {
    weighing.batter += i.weighed;
    if (i.role == Role::fat || i.role == Role::blend) weighing.fats += i.weighed;
    if (i.role != Role::alkali) continue;
    pure += pure_share(formula, i) * i.weighed;
    const bool is_naoh = formula.alkalis[i.index].alkali == chemistry::Alkali::sodium_hydroxide;
    (is_naoh ? weighing.naoh : weighing.koh) +=
        formula.alkalis[i.index].solution ? pure_share(formula, i) * i.weighed : i.weighed;
  }
  weighing.lye_strength = Share::of_one(pure / (pure + water));
  weighing.pot_strength = Share::of_one(pure / (pure + pot_water_of_lye_water * water));
  weighing.water_to_alkali = water / pure;
  weighing.water_of_fats = Share::of_one(water / weighing.fats);
  const Reacting r = reacting(formula, weighing.ingredients);
  weighing.superfat = chemistry::effective_superfat(r.fats, r.alkalis, r.acids, r.blends);
}

std::vector<Mass> masses_of(const Weighing& weighing, Role role, std::size_t count) {
  std::vector<Mass> masses(count);
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == role) masses[i.index] += i.weighed;
  return masses;
}

}  // namespace

Mend with_more(const Weighing& weighing, const Formula& formula, const std::vector<Mass>& more) {
  Mend mend{{}, weighing};
  for (std::size_t k = 0; k < more.size(); ++k) {
    Ingredient& i = mend.after.ingredients[k];
    if (!(more[k] > Mass{})) continue;
    i.weighed += more[k];
    mend.to_add.push_back(i);
    mend.to_add.back().weighed = more[k];
    mend.to_add.back().exact = more[k];
    mend.to_add.back().weighings = 1;
  }
  settle(mend.after, formula);
  return mend;
}

namespace {

/// The formula's fats, `all` together, each rounded up to what its scale shows, as they are
/// weighed.
std::vector<Mass> fats_of(const Weighing& weighing, const Formula& formula, Mass all) {
  std::vector<Mass> fats;
  for (const Ingredient& i : weighing.ingredients) {
    Share share;
    if (i.role == Role::blend) share = formula.blend->of_fats;
    if (i.role == Role::fat) share = chemistry::outside_blend(formula, i.index);
    fats.push_back(rounded_up(share * all, i.step));
  }
  return fats;
}

using Holds = std::function<bool(const Weighing&)>;

/// The least of the formula's fats with which `holds`, which more fats never break; nothing if even
/// twice the fats are too few.
std::optional<Mend> least_fats(const Weighing& weighing, const Formula& formula,
                               const Holds& holds) {
  const auto mended = [&](Mass all) {
    return with_more(weighing, formula, fats_of(weighing, formula, all));
  };
  Mass too_few, enough = weighing.fats;
  if (!holds(mended(enough).after)) return std::nullopt;
  for (int halving = 0; halving < 40; ++halving) {
    const Mass middle = 0.5 * (too_few + enough);
    (holds(mended(middle).after) ? enough : too_few) = middle;
  }
  return mended(enough);
}

/// The most of the alkali that is still missing with which the superfat keeps to the aim; nothing
/// if that is less than the scale shows.
std::optional<Mend> most_alkali(const Weighing& weighing, const Formula& formula) {
  const auto needed =
      chemistry::alkalis_for(formula, fat_masses(formula, weighing.ingredients),
                             masses_of(weighing, Role::extra_oil, formula.additives.size()),
                             masses_of(weighing, Role::additive, formula.additives.size()));
  const auto there = masses_of(weighing, Role::alkali, formula.alkalis.size());
  const auto part_of_missing = [&](double part) {
    std::vector<Mass> more;
    for (const Ingredient& i : weighing.ingredients) {
      const Mass missing =
          i.role == Role::alkali ? std::max(Mass{}, needed[i.index] - there[i.index]) : Mass{};
      more.push_back(rounded_down(part * missing, i.step));
    }
    return with_more(weighing, formula, more);
  };
  const auto keeps_to_aim = [](const Weighing& after) {
    return after.superfat.nominal.of_one() >= after.aim.of_one() - 1e-9 &&
           after.superfat.nominal >= Share{};
  };
  Mend all = part_of_missing(1);
  if (!keeps_to_aim(all.after)) {  // of two alkalis one was weighed too much
    double holds = 0, too_much = 1;
    for (int halving = 0; halving < 40; ++halving) {
      const double middle = (holds + too_much) / 2;
      (keeps_to_aim(part_of_missing(middle).after) ? holds : too_much) = middle;
    }
    all = part_of_missing(holds);
  }
  if (all.to_add.empty()) return std::nullopt;
  return all;
}

/// Plain water in which the missing alkali is as strong as the batch's lye was planned; none where
/// a solution brings more.
Mass water_for(const Mend& missing, const Formula& formula, Share strength, const Scales& scales) {
  Mass pure, in_solutions;
  for (const Ingredient& i : missing.to_add) {
    pure += pure_share(formula, i) * i.weighed;
    if (formula.alkalis[i.index].solution) in_solutions += (1 - pure_share(formula, i)) * i.weighed;
  }
  const Mass exact = std::max(Mass{}, (1 / strength.of_one() - 1) * pure - in_solutions);
  return rounded_up(exact, on_fine_scale(scales, exact).step);
}

}  // namespace

Mends mends_of(const Weighing& now, const Formula& formula, Share strength, const Scales& scales) {
  const Share aim = now.aim;
  const auto is_above_zero = [](const Weighing& after) {
    return after.superfat.likely_low >= Share{} && after.superfat.nominal >= Share{};
  };
  const auto is_at_aim = [&](const Weighing& after) {
    return is_above_zero(after) && after.superfat.nominal.of_one() >= aim.of_one() - 1e-9;
  };
  Mends mends;
  if (!is_at_aim(now)) {
    mends.to_aim = least_fats(now, formula, is_at_aim);
    mends.is_beyond_mending = !mends.to_aim;
  }
  if (!is_above_zero(now)) mends.to_zero = least_fats(now, formula, is_above_zero);
  if (now.superfat.nominal > aim) mends.missing = most_alkali(now, formula);
  if (mends.missing) mends.water = water_for(*mends.missing, formula, strength, scales);
  return mends;
}

}  // namespace brimwright::planning
