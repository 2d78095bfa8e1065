#include "planning/weighing.h"

#include "chemistry/liquid_water.h"
#include "chemistry/lye_need.h"
#include "planning/scales.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/wording.h"

#include <algorithm>
#include <numeric>

namespace brimwright::planning {
namespace {

using chemistry::Alkali;
using chemistry::Formula;
using chemistry::Proportions;

Mass sum_of(const std::vector<Mass>& masses) {
  return std::accumulate(masses.begin(), masses.end(), Mass{});
}

std::vector<Mass> weighed_masses(const std::vector<Ingredient>& ingredients) {
  std::vector<Mass> masses;
  for (const auto& ingredient : ingredients) masses.push_back(ingredient.weighed);
  return masses;
}

/// Rounded up: a batch must never run short because of the scale.
std::vector<Ingredient> weighed_fats(const Formula& formula, const chemistry::Proportions& per_fat,
                                     Mass all_fats, const Scales& scales) {
  std::vector<Ingredient> fats;
  for (std::size_t i = 0; i < formula.fats.size(); ++i) {
    const auto& fat = formula.fats[i].fat;
    const Mass exact = per_fat.fats[i] * all_fats;
    const auto [step, weighings] = on_large_scale(scales, exact);
    const Mass set_aside = rounded_nearest(per_fat.set_aside[i] * all_fats, scales.fine.step);
    fats.push_back({.name = fat.name,
                    .price_name = fat.id,
                    .role = Role::fat,
                    .index = i,
                    .goes_into = "fats",
                    .exact = exact,
                    .weighed = rounded_up(exact, step),
                    .step = step,
                    .weighings = weighings,
                    .shown = Rounded::up,
                    .spoonful = {},
                    .set_aside = set_aside});
  }
  return fats;
}

/// Its supplier's document sets a most.
bool is_limited(const chemistry::Additive& additive) {
  return additive.limit || additive.limit_of_finished_soap;
}

/// What asks for alkali, or uses it up, never looks like less than it is; what is limited never
/// like more.
Rounded shown_towards(const chemistry::Additive& additive) {
  if (additive.contains_fat || additive.contains_acid) return Rounded::up;
  return is_limited(additive) ? Rounded::down : Rounded::nearest;
}

std::vector<Ingredient> weighed_additives(const Formula& formula,
                                          const chemistry::Proportions& per_fat, Mass all_fats,
                                          const Scales& scales, std::vector<Remark>& remarks) {
  std::vector<Ingredient> additives;
  for (std::size_t i = 0; i < formula.additives.size(); ++i) {
    const auto& additive = formula.additives[i];
    const Mass exact = per_fat.additives[i] * all_fats;
    const auto [step, weighings] = on_fine_scale(scales, exact);
    const Mass weighed =
        is_limited(additive) ? rounded_down(exact, step) : rounded_nearest(exact, step);
    if (weighed == Mass{} && exact > Mass{})
      remarks.push_back({Severity::caution,
                         additive.name + ": " + trimmed(exact / gram, 4) +
                             " g is less than the fine scale shows; stir a larger weighed amount "
                             "into oil and take a share of that, or make a larger batch."});
    std::optional<Volume> spoonful;
    if (additive.bulk_density) spoonful = exact / *additive.bulk_density;
    additives.push_back({.name = additive.name,
                         .price_name = additive.name,
                         .role = Role::additive,
                         .index = i,
                         .goes_into = chemistry::name_of(additive.goes_into),
                         .exact = exact,
                         .weighed = weighed,
                         .step = step,
                         .weighings = weighings,
                         .shown = shown_towards(additive),
                         .spoonful = spoonful,
                         .set_aside = {}});
  }
  return additives;
}

/// One entry for each additive, so that the orders match; those without extra oil weigh nothing.
std::vector<Ingredient> weighed_extra_oils(const Formula& formula, const std::vector<Mass>& exact,
                                           const Scales& scales) {
  std::vector<Ingredient> oils;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    const auto& dispersal = formula.additives[i].dispersal;
    const auto [step, weighings] = on_fine_scale(scales, exact[i]);
    const std::string oil = dispersal ? dispersal->oil.name : "";
    oils.push_back({.name = oil + " to disperse the " + formula.additives[i].name,
                    .price_name = dispersal ? dispersal->oil.id : "",
                    .role = Role::extra_oil,
                    .index = i,
                    .goes_into = "batter",
                    .exact = exact[i],
                    .weighed = rounded_nearest(exact[i], step),
                    .step = step,
                    .weighings = weighings,
                    .shown = Rounded::up,
                    .spoonful = {},
                    .set_aside = {}});
  }
  return oils;
}

/// Rounded down: a step of alkali too many cannot be taken out again.
std::vector<Ingredient> weighed_alkalis(const Formula& formula, const std::vector<Mass>& exact,
                                        const Scales& scales) {
  std::vector<Ingredient> alkalis;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    const auto& alkali = formula.alkalis[i];
    const std::string name = chemistry::formula_of(alkali.alkali);
    const auto [step, weighings] = on_fine_scale(scales, exact[i]);
    const Mass weighed = rounded_down(exact[i], step);
    if (weighed == Mass{})
      throw UserError({formula.file, "/alkali/" + std::to_string(i),
                       "the batch needs " + trimmed(exact[i] / gram, 4) + " g of " + name +
                           ", less than the scale's step of " + in_grams(step, 4),
                       "make a larger batch or use a finer scale"});
    alkalis.push_back({.name = name + ", " + trimmed(alkali.purity.in_percent(), 2) + " % pure",
                       .price_name = name,
                       .role = Role::alkali,
                       .index = i,
                       .goes_into = "lye",
                       .exact = exact[i],
                       .weighed = weighed,
                       .step = step,
                       .weighings = weighings,
                       .shown = Rounded::down,
                       .spoonful = {},
                       .set_aside = {}});
  }
  return alkalis;
}

/// The step nearest to `exact`, but at least one that holds `least`, in which the alkali dissolves.
Ingredient weighed_water(Mass exact, Mass least, const Scales& scales) {
  const auto [step, weighings] = on_large_scale(scales, std::max(exact, least));
  const Mass nearest = rounded_nearest(exact, step);
  const Mass weighed = nearest >= least - 1e-9 * least ? nearest : rounded_up(least, step);
  return {.name = "Water, distilled",
          .price_name = "water",
          .role = Role::water,
          .goes_into = "lye",
          .exact = exact,
          .weighed = weighed,
          .step = step,
          .weighings = weighings,
          .spoonful = {},
          .set_aside = {}};
}

/// Plain water without which the lye would be above 50 % strong: as much as the pure alkali weighs,
/// less what liquids bring into the pot.
Mass least_water(const Formula& formula, const std::vector<Ingredient>& alkalis,
                 const std::vector<Mass>& additives) {
  Mass pure;
  for (const Ingredient& alkali : alkalis)
    pure += formula.alkalis[alkali.index].purity * alkali.weighed;
  return std::max(Mass{}, pure - chemistry::water_in_lye_liquids(formula, additives));
}

bool goes_into_lye(const Ingredient& ingredient) { return ingredient.goes_into == "lye"; }

void add_fat(Reacting& all, const std::string& name, const chemistry::Fat& fat,
             const chemistry::SaponificationRange& saponification, const Ingredient& weighed,
             double share = 1) {
  all.fats.push_back({name, saponification, share * weighed.weighed, share * weighed.step,
                      static_cast<double>(weighed.weighings), fat.slow.has_value()});
}

/// Fills in what the weighed lye amounts to, in the three ways the trade says water.
void state_lye(Weighing& weighing, const Formula& formula, const std::vector<Ingredient>& alkalis,
               const std::vector<Mass>& additives) {
  Mass pure;
  for (std::size_t i = 0; i < alkalis.size(); ++i) {
    const Mass weighed = alkalis[i].weighed;
    pure += formula.alkalis[i].purity * weighed;
    (formula.alkalis[i].alkali == Alkali::sodium_hydroxide ? weighing.naoh : weighing.koh) +=
        weighed;
  }
  const Mass water = weighing.water + weighing.water_in_acids;
  weighing.lye_strength = Share::of_one(pure / (pure + water));
  weighing.water_to_alkali = water / pure;
  weighing.water_of_fats = Share::of_one(water / weighing.fats);
  const Mass in_pot = weighing.water - weighing.water_in_liquids +
                      chemistry::water_in_lye_liquids(formula, additives) +
                      chemistry::water_in_lye_acids(formula, additives);
  weighing.pot_strength = Share::of_one(pure / (pure + in_pot));
}

void refuse_lye_heavy(const Weighing& weighing, const Formula& formula) {
  if (weighing.superfat.nominal >= Share{}) return;
  throw UserErrorWithFacts({formula.file, "/superfat"},
                           "on these scales the batter would be lye-heavy: superfat " +
                               chemistry::lowest_in_words(weighing.superfat.nominal),
                           "plan a higher superfat, use a finer scale or make a larger batch",
                           {.is_lye_heavy = true});
}

}  // namespace

Reacting reacting(const Formula& formula, const std::vector<Ingredient>& ingredients) {
  Reacting all;
  for (const Ingredient& i : ingredients) {
    const auto weighings = static_cast<double>(i.weighings);
    if (i.role == Role::fat) {
      const auto& fat = formula.fats[i.index];
      add_fat(all, i.name, fat.fat, fat.saponification, i);
    }
    if (i.role == Role::alkali) {
      const auto& a = formula.alkalis[i.index];
      all.alkalis.push_back(
          {a.alkali, a.purity, a.purity_low, a.purity_high, i.weighed, i.step, weighings});
    }
    if (i.role == Role::extra_oil) {
      const auto& oil = formula.additives[i.index].dispersal->oil;
      add_fat(all, i.name, oil, oil.saponification, i);
    }
    if (i.role != Role::additive) continue;
    const auto& additive = formula.additives[i.index];
    if (const auto& fat = additive.contains_fat)
      add_fat(all, "the fat in " + additive.name, fat->fat, fat->fat.saponification, i,
              fat->share.of_one());
    if (const auto& acid = additive.contains_acid)
      all.acids.push_back(
          {additive.name, acid->share.of_one() * acid->koh_g_per_g, i.weighed, i.step, weighings});
  }
  return all;
}

Weighing weighed_once(const Formula& formula, const Proportions& per_fat, Mass to_make,
                      const Scales& scales) {
  Weighing weighing;
  const auto fats = weighed_fats(formula, per_fat, to_make / per_fat.batter, scales);
  weighing.fats = sum_of(weighed_masses(fats));
  auto additives = weighed_additives(formula, per_fat, weighing.fats, scales, weighing.remarks);
  auto oils = weighed_extra_oils(
      formula, chemistry::extra_oils_for(formula, weighed_masses(additives)), scales);
  const auto alkalis =
      weighed_alkalis(formula,
                      chemistry::alkalis_for(formula, weighed_masses(fats), weighed_masses(oils),
                                             weighed_masses(additives)),
                      scales);
  weighing.water_in_liquids = chemistry::water_in_liquids(formula, weighed_masses(additives));
  const Mass all_water = chemistry::water_for(formula, weighed_masses(alkalis), weighing.fats);
  const auto water =
      weighed_water(std::max(Mass{}, all_water - weighing.water_in_liquids),
                    least_water(formula, alkalis, weighed_masses(additives)), scales);
  weighing.water = water.weighed + weighing.water_in_liquids;
  weighing.aim = formula.superfat;
  weighing.water_in_acids = chemistry::water_in_acids(formula, weighed_masses(additives));
  state_lye(weighing, formula, alkalis, weighed_masses(additives));

  auto& all = weighing.ingredients;
  all.insert(all.end(), fats.begin(), fats.end());
  for (const auto& oil : oils)
    if (oil.weighed > Mass{}) all.push_back(oil);
  // Alkali goes into what is wet and never the other way round, so it stands after all of that,
  // save what is stirred into the lye once it has cooled.
  if (water.weighed > Mass{}) all.push_back(water);  // liquids may stand in for all of it
  const auto others = std::stable_partition(additives.begin(), additives.end(), goes_into_lye);
  const auto cooled = std::stable_partition(additives.begin(), others, [&](const Ingredient& one) {
    return !formula.additives[one.index].into_cooled_lye;
  });
  all.insert(all.end(), additives.begin(), cooled);
  all.insert(all.end(), alkalis.begin(), alkalis.end());
  all.insert(all.end(), cooled, others);
  all.insert(all.end(), others, additives.end());
  for (const auto& ingredient : all) weighing.batter += ingredient.weighed;
  const Reacting r = reacting(formula, all);
  weighing.superfat = chemistry::effective_superfat(r.fats, r.alkalis, r.acids);
  return weighing;
}

Weighing trial_weighing_of(const Formula& formula, const Proportions& per_fat, Mass to_make,
                           const Scales& scales) {
  Mass target = to_make;
  Weighing weighing = weighed_once(formula, per_fat, target, scales);
  // Alkali is rounded down and additives to the nearest step, so the sum may fall a hair short;
  // then the fats take one more step, never the alkali alone.
  while (weighing.batter < to_make - 1e-9 * to_make) {
    target += scales.large.step;
    weighing = weighed_once(formula, per_fat, target, scales);
  }
  refuse_lye_heavy(weighing, formula);
  return weighing;
}

namespace {

/// Adds `count` times `one` to its like in `sum`, or puts it before the likes of what follows it.
void add_ingredient(std::vector<Ingredient>& sum, std::size_t& at, const Ingredient& one,
                    std::int64_t count) {
  const auto is_like = [&](const Ingredient& other) {
    return other.role == one.role && other.index == one.index;
  };
  const auto found = std::find_if(sum.begin(), sum.end(), is_like);
  const bool is_new = found == sum.end();
  const auto like = is_new ? sum.insert(sum.begin() + static_cast<std::ptrdiff_t>(at), one) : found;
  at = static_cast<std::size_t>(like - sum.begin()) + 1;
  const auto times = static_cast<double>(count);
  if (is_new) {
    like->exact = like->weighed = like->set_aside = Mass{};
    like->weighings = 0;
    if (like->spoonful) like->spoonful = Volume{};
  }
  like->exact += times * one.exact;
  like->weighed += times * one.weighed;
  like->set_aside += times * one.set_aside;
  like->step = std::min(like->step, one.step);
  like->weighings += count * one.weighings;
  if (like->spoonful) *like->spoonful += times * *one.spoonful;
}

}  // namespace

Weighing sum_of(const Formula& formula, const std::vector<Weighings>& all) {
  const Weighing* worst = &all.front().each;
  Weighing sum;
  for (const auto& [count, each] : all) {
    const auto times = static_cast<double>(count);
    sum.batter += times * each.batter;
    sum.fats += times * each.fats;
    sum.water += times * each.water;
    sum.water_in_liquids += times * each.water_in_liquids;
    sum.water_in_acids += times * each.water_in_acids;
    std::size_t at = 0;
    for (const auto& ingredient : each.ingredients)
      add_ingredient(sum.ingredients, at, ingredient, count);
    if (each.superfat.low < worst->superfat.low) worst = &each;
  }
  sum.aim = worst->aim;
  sum.superfat = worst->superfat;
  std::vector<Ingredient> alkalis;
  std::vector<Mass> additives(formula.additives.size());
  for (const auto& ingredient : sum.ingredients) {
    if (ingredient.role == Role::alkali) alkalis.push_back(ingredient);
    if (ingredient.role == Role::additive) additives[ingredient.index] = ingredient.weighed;
  }
  state_lye(sum, formula, alkalis, additives);
  return sum;
}

}  // namespace brimwright::planning
