#include "planning/weighing.h"

#include "chemistry/fat_blend.h"
#include "chemistry/liquid_water.h"
#include "chemistry/lye_need.h"
#include "chemistry/lye_solution.h"
#include "planning/scales.h"
#include "units/complaint_facts.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/wording.h"

#include <algorithm>
#include <numeric>
#include <utility>

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

/// The blend that stands ready, in place of what it holds of the fats.
Ingredient weighed_blend(const Formula& formula, Mass all_fats, const Scales& scales) {
  const auto& blend = *formula.blend;
  const Mass exact = blend.of_fats * all_fats;
  const auto [step, weighings] = on_large_scale(scales, exact);
  std::vector<MadeOf> made_of;
  for (std::size_t i = 0; i < blend.parts.size(); ++i)
    if (blend.parts[i] > Share{})
      made_of.push_back(
          {formula.fats[i].fat.name, formula.fats[i].fat.id, blend.parts[i].of_one()});
  return {.name = blend.name + " (blend, " + in_percent(blend.of_fats, 2) + " of the fats)",
          .price_name = blend.name,
          .role = Role::blend,
          .goes_into = "fats",
          .exact = exact,
          .weighed = rounded_up(exact, step),
          .step = step,
          .weighings = weighings,
          .shown = Rounded::up,
          .spoonful = {},
          .set_aside = {},
          .made_of = std::move(made_of)};
}

/// Rounded up: a batch must never run short because of the scale.
std::vector<Ingredient> weighed_fats(const Formula& formula, const chemistry::Proportions& per_fat,
                                     Mass all_fats, const Scales& scales) {
  std::vector<Ingredient> fats;
  if (formula.blend) fats.push_back(weighed_blend(formula, all_fats, scales));
  for (std::size_t i = 0; i < formula.fats.size(); ++i) {
    const auto& fat = formula.fats[i].fat;
    const Share beside = chemistry::outside_blend(formula, i);
    if (formula.blend && !(beside > Share{})) continue;
    const Mass exact = (formula.blend ? beside.of_one() : per_fat.fats[i]) * all_fats;
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

/// Of a solution that she dissolves herself; none where it is bought.
std::vector<MadeOf> made_of(const chemistry::FormulaAlkali& alkali) {
  if (!alkali.solution || !alkali.solution->dissolved_of) return {};
  const std::string dry = chemistry::formula_of(alkali.alkali);
  const Share purity = *alkali.solution->dissolved_of;
  const double of_a_gram = alkali.purity.of_one() / purity.of_one();
  return {{dry + ", " + trimmed(purity.in_percent(), 2) + " % pure", dry, of_a_gram},
          {"Water, distilled", "water", 1 - of_a_gram}};
}

/// Rounded down: a step of alkali too many cannot be taken out again.
std::vector<Ingredient> weighed_alkalis(const Formula& formula, const std::vector<Mass>& exact,
                                        const Scales& scales) {
  std::vector<Ingredient> alkalis;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    const auto& alkali = formula.alkalis[i];
    const std::string name =
        alkali.solution ? alkali.solution->name : chemistry::formula_of(alkali.alkali);
    const auto [step, weighings] = on_fine_scale(scales, exact[i]);
    const Mass weighed = rounded_down(exact[i], step);
    if (weighed == Mass{})
      throw UserError({formula.file, "/alkali/" + std::to_string(i),
                       "the batch needs " + trimmed(exact[i] / gram, 4) + " g of " + name +
                           ", less than the scale's step of " + in_grams(step, 4),
                       "make a larger batch or use a finer scale"});
    alkalis.push_back({.name = chemistry::name_of(alkali),
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
                       .set_aside = {},
                       .made_of = made_of(alkali)});
  }
  return alkalis;
}

bool takes_solution(const Formula& formula) {
  return std::any_of(formula.alkalis.begin(), formula.alkalis.end(),
                     [](const auto& alkali) { return alkali.solution.has_value(); });
}

/// The step nearest to `exact`, but at least one that holds `least`, in which the alkali dissolves.
Ingredient weighed_water(const Formula& formula, Mass exact, Mass least, const Scales& scales) {
  const auto [step, weighings] = on_large_scale(scales, std::max(exact, least));
  const Mass nearest = rounded_nearest(exact, step);
  const Mass weighed = nearest >= least - 1e-9 * least ? nearest : rounded_up(least, step);
  return {.name = takes_solution(formula) ? "Extra water, distilled" : "Water, distilled",
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
/// less what liquids and solutions bring into the pot. What is weighed dry dissolves in the plain
/// water, without the solutions'.
Mass least_water(const Formula& formula, const std::vector<Ingredient>& alkalis,
                 const std::vector<Mass>& additives) {
  Mass lacking, dry;
  for (const Ingredient& weighed : alkalis) {
    const auto& alkali = formula.alkalis[weighed.index];
    const Mass pure = alkali.purity * weighed.weighed;
    lacking += alkali.solution ? pure - (weighed.weighed - pure) : pure;
    if (!alkali.solution) dry += pure;
  }
  return std::max(Mass{},
                  std::max(lacking, dry) - chemistry::water_in_lye_liquids(formula, additives));
}

bool goes_into_lye(const Ingredient& ingredient) { return ingredient.goes_into == "lye"; }

/// Fills in what the weighed lye amounts to, in the three ways the trade says water.
void state_lye(Weighing& weighing, const Formula& formula, const std::vector<Ingredient>& alkalis,
               const std::vector<Mass>& additives) {
  Mass pure;
  for (const Ingredient& one : alkalis) {
    const Mass weighed = one.weighed;
    const auto& alkali = formula.alkalis[one.index];
    pure += alkali.purity * weighed;
    (alkali.alkali == Alkali::sodium_hydroxide ? weighing.naoh : weighing.koh) +=
        alkali.solution ? alkali.purity * weighed : weighed;
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
                      chemistry::alkalis_for(formula, fat_masses(formula, fats),
                                             weighed_masses(oils), weighed_masses(additives)),
                      scales);
  weighing.water_in_liquids = chemistry::water_in_liquids(formula, weighed_masses(additives));
  weighing.water_in_solutions = chemistry::water_in_solutions(formula, weighed_masses(alkalis));
  const Mass ready = weighing.water_in_liquids + weighing.water_in_solutions;
  const Mass all_water = chemistry::water_for(formula, weighed_masses(alkalis), weighing.fats);
  const auto water =
      weighed_water(formula, std::max(Mass{}, all_water - ready),
                    least_water(formula, alkalis, weighed_masses(additives)), scales);
  weighing.water = water.weighed + ready;
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
  // What is dry dissolves before a solution is stirred in.
  for (const bool is_solution : {false, true})
    for (const auto& alkali : alkalis)
      if (formula.alkalis[alkali.index].solution.has_value() == is_solution) all.push_back(alkali);
  all.insert(all.end(), cooled, others);
  all.insert(all.end(), others, additives.end());
  for (const auto& ingredient : all) weighing.batter += ingredient.weighed;
  const Reacting r = reacting(formula, all);
  weighing.superfat = chemistry::effective_superfat(r.fats, r.alkalis, r.acids, r.blends);
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
    sum.water_in_solutions += times * each.water_in_solutions;
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
