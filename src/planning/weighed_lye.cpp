#include "planning/weighed_lye.h"

#include "chemistry/fat_blend.h"
#include "chemistry/liquids.h"
#include "chemistry/lye_need.h"
#include "chemistry/lye_solution.h"
#include "chemistry/proportions.h"
#include "planning/batch_sums.h"
#include "planning/plan_cautions.h"
#include "planning/scales.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

namespace brimwright::planning {
namespace {

using chemistry::Formula;

std::string in_percent(Share superfat) { return chemistry::lowest_in_words(superfat); }

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

/// `weighing` with `more` of each of its ingredients, in their order.
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

std::string listed(const Mend& mend) {
  std::string list;
  for (const Ingredient& i : mend.to_add)
    list += (list.empty() ? "" : ", ") + i.name + " " +
            on_scale(i.weighed, i.step, i.role == Role::alkali ? Rounded::down : Rounded::up);
  return list;
}

std::string used_in_words(const Weighing& weighing) {
  std::string used;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == Role::alkali)
      used += (used.empty() ? "" : " and ") + on_scale(i.weighed, i.step) + " of " + i.name;
  return used;
}

std::string band(const chemistry::EffectiveSuperfat& superfat) {
  return "19 in 20 between " + in_percent(superfat.likely_low) + " and " +
         chemistry::highest_in_words(superfat.likely_high);
}

/// What is said of the batter as it stands, a danger where it may be lye-heavy.
Remark remark_of(const MadeLye& made) {
  const auto& superfat = made.as_it_is.superfat;
  const std::string what = made.formula.name + " of batch " + std::to_string(made.batch) +
                           ", with " + used_in_words(made.as_it_is) + ": superfat " +
                           in_percent(superfat.nominal) + " (" + band(superfat) + ")";
  if (superfat.likely_low >= Share{})
    return {Severity::note,
            "Lye already weighed. " + what + "; planned is " + in_percent(made.as_it_is.aim) + "."};
  const std::string burns =
      superfat.nominal < Share{} ? "LYE-HEAVY. " : "LYE-HEAVY SOAP MAY COME OUT. ";
  if (made.is_beyond_mending)
    return {Severity::danger, burns + what +
                                  ". Putting it right would take more fats than there are: do not "
                                  "use this lye solution for this batch."};
  const std::string least =
      made.to_zero && made.to_aim && listed(*made.to_zero) != listed(*made.to_aim)
          ? " The least that keeps 19 in 20 above zero: " + listed(*made.to_zero) + "."
          : "";
  return {Severity::danger, burns + what +
                                ". Do not pour it as it is: below zero lye is left over and burns. "
                                "To fix it, melt and stir in of its own fats: " +
                                listed(*made.to_aim) + "; then it is " +
                                in_percent(made.to_aim->after.superfat.nominal) + "." + least +
                                " Never fix it with an acid."};
}

void mend(MadeLye& made, const Scales& scales) {
  const Weighing& now = made.as_it_is;
  const Share aim = now.aim;
  const auto is_above_zero = [](const Weighing& after) {
    return after.superfat.likely_low >= Share{} && after.superfat.nominal >= Share{};
  };
  const auto is_at_aim = [&](const Weighing& after) {
    return is_above_zero(after) && after.superfat.nominal.of_one() >= aim.of_one() - 1e-9;
  };
  if (!is_at_aim(now)) {
    made.to_aim = least_fats(now, made.formula, is_at_aim);
    made.is_beyond_mending = !made.to_aim;
  }
  if (!is_above_zero(now)) made.to_zero = least_fats(now, made.formula, is_above_zero);
  if (now.superfat.nominal > aim) made.missing = most_alkali(now, made.formula);
  if (made.missing)
    made.water = water_for(*made.missing, made.formula, made.as_planned.lye_strength, scales);
}

/// What a scale shows is a multiple of its step; anything finer was weighed on another one.
void require_shown(Mass mass, Mass step, const Place& where) {
  const double steps = mass / step;
  if (std::abs(steps - std::round(steps)) <= 1e-6 * std::max(1.0, steps)) return;
  throw UserError(where, "cannot be the weight on a scale of " + on_scale(step, step) + " steps",
                  "type it as the scale showed it, or give the scale you used under \"scales\"");
}

/// Which of `ingredients` a fat that was added is.
std::size_t place_of(const AddedFat& fat, const Formula& formula,
                     const std::vector<Ingredient>& ingredients, const Scales& scales) {
  const auto& fats = formula.fats;
  const auto known = std::find_if(fats.begin(), fats.end(),
                                  [&](const auto& one) { return one.fat.id == fat.fat; });
  if (known == fats.end())
    throw UserError(fat.where, "\"" + fat.fat + "\" is not a fat of " + formula.name,
                    "name one of its own fats as the formula does");
  require_shown(fat.weighed, on_large_scale(scales, fat.weighed).step, fat.where);
  const auto index = static_cast<std::size_t>(known - fats.begin());
  for (std::size_t k = 0; k < ingredients.size(); ++k)
    if (ingredients[k].role == Role::fat && ingredients[k].index == index) return k;
  throw UserError(
      fat.where,
      "\"" + fat.fat + "\" is weighed within \"" + formula.blend->name + "\", not by itself",
      "name a fat that is weighed beside the blend, or plan the run without \"blend\"");
}

/// What the story says of one batter, put on what was planned for it.
MadeLye made_of(const Formula& planned_formula, const Weighing& planned, const LyeStory& story,
                const WhichBatter& which, const Scales& scales) {
  MadeLye made{.formula = planned_formula, .as_planned = planned, .as_it_is = planned};
  buy(made.formula, story.purities);
  for (Ingredient& i : made.as_it_is.ingredients) {
    if (i.role != Role::alkali) continue;
    const auto& alkali = made.formula.alkalis[i.index];
    i.name = chemistry::name_of(alkali);
    for (const UsedAlkali& used : story.used)
      if (used.batter == which && used.alkali == alkali.alkali) {  // in its form: require_alkalis
        i.weighed = i.exact = used.weighed;
        i.step = on_fine_scale(scales, used.weighed).step;
        i.weighings = on_fine_scale(scales, used.weighed).weighings;
        require_shown(i.weighed, i.step, used.where);
      }
  }
  const auto& ingredients = made.as_it_is.ingredients;
  std::vector<Mass> added(ingredients.size());
  for (const AddedFat& fat : story.added)
    if (fat.batter == which) added[place_of(fat, made.formula, ingredients, scales)] += fat.weighed;
  made.as_it_is = with_more(made.as_it_is, made.formula, added).after;
  mend(made, scales);
  made.as_it_is.alarms = {};  // told of this batch alone
  return made;
}

/// Dry alkali for its solution is twice as much, or more.
void refuse_other_form(const chemistry::FormulaAlkali& alkali, const Formula& formula,
                       const UsedAlkali& used) {
  if (alkali.solution.has_value() == used.is_solution) return;
  const std::string what = chemistry::formula_of(alkali.alkali);
  if (used.is_solution)
    throw UserError(
        used.where, formula.name + " takes " + what + " dry, not as a solution",
        "a batter that got the solution by the dry alkali's weight cannot be worked out "
        "here: do not use it");
  throw UserError(
      used.where,
      formula.name + " takes " + what + " as the solution \"" + alkali.solution->name + "\"",
      "write \"" + what + " solution\" before its weight; if it was dry " + what +
          " by the solution's weight, the soap burns: do not use it");
}

void require_alkalis(const Formula& formula, const LyeStory& story, const WhichBatter& which) {
  for (const UsedAlkali& used : story.used) {
    if (used.batter != which) continue;
    const auto alkali = std::find_if(formula.alkalis.begin(), formula.alkalis.end(),
                                     [&](const auto& one) { return one.alkali == used.alkali; });
    if (alkali != formula.alkalis.end()) refuse_other_form(*alkali, formula, used);
    if (alkali == formula.alkalis.end())
      throw UserError(
          used.where, formula.name + " takes no " + chemistry::formula_of(used.alkali),
          "a batter that got the wrong alkali cannot be worked out here: do not use it");
  }
}

/// The batch that the story is about, by itself; it is split off from those that are alike.
std::size_t split_off(Plan& plan, const LyeStory& story) {
  if (!story.batch && plan.batches.size() > 1)
    throw UserError(story.batch_where, "is missing, and the run's batches differ",
                    "give its number, 1 to " + std::to_string(plan.pieces.batches));
  const std::int64_t number = story.batch.value_or(1);
  for (std::size_t i = 0; i < plan.batches.size(); ++i) {
    auto& numbers = plan.batches[i].numbers;
    const auto found = std::find(numbers.begin(), numbers.end(), number);
    if (found == numbers.end()) continue;
    if (numbers.size() == 1) return i;
    numbers.erase(found);
    Batch alone = plan.batches[i];
    alone.numbers = {number};
    plan.batches.insert(plan.batches.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                        std::move(alone));
    return i + 1;
  }
  throw UserError(story.batch_where, "there is no batch " + std::to_string(number),
                  "give a number from 1 to " + std::to_string(plan.pieces.batches));
}

/// The whipping that `which` means, by itself.
std::size_t split_off(std::vector<Whipping>& whippings, const WhichBatter& which,
                      const Place& where) {
  std::int64_t all = 0;
  for (const Whipping& whipping : whippings) all += whipping.count;
  if (which.whipping == 0 && whippings.size() > 1)
    throw UserError(where, "does not say which whipping of the topping, and they differ",
                    "write \"topping 1\" to \"topping " + std::to_string(all) + "\"");
  std::int64_t left = std::max<std::int64_t>(1, which.whipping);
  for (std::size_t i = 0; i < whippings.size(); ++i) {
    if (left > whippings[i].count) {
      left -= whippings[i].count;
      continue;
    }
    // Those before and after it stay alike; each keeps its place in the order.
    const std::int64_t before = left - 1, after = whippings[i].count - left;
    const auto alike = [&](std::int64_t count) {
      Whipping some = whippings[i];
      some.count = count;
      return some;
    };
    const auto at = [&](std::size_t k) {
      return whippings.begin() + static_cast<std::ptrdiff_t>(k);
    };
    if (after > 0) whippings.insert(at(i + 1), alike(after));
    if (before > 0) whippings.insert(at(i), alike(before));
    const std::size_t alone = before > 0 ? i + 1 : i;
    whippings[alone].count = 1;
    return alone;
  }
  throw UserError(where, "there is no whipping " + std::to_string(which.whipping),
                  "the topping of a batch has " + std::to_string(all));
}

/// All batters that the story is about, each once, with where it was first said.
std::vector<std::pair<WhichBatter, Place>> batters_of(const LyeStory& story) {
  std::vector<std::pair<WhichBatter, Place>> batters;
  const auto note = [&](const WhichBatter& batter, const Place& where) {
    for (const auto& [known, place] : batters)
      if (known == batter) return;
    batters.emplace_back(batter, where);
  };
  for (const UsedAlkali& used : story.used) note(used.batter, used.where);
  for (const AddedFat& fat : story.added) note(fat.batter, fat.where);
  return batters;
}

/// Puts the made lye into its batter's tally.
void take_up(BatterTally& batter, const MadeLye& made) {
  batter.weighing = made.as_it_is;
  batter.lost = batter.weighing.batter - batter.in_pieces;
}

}  // namespace

void plan_with(Formula& formula, const std::vector<BoughtPurity>& purities) {
  if (purities.empty()) return;
  buy(formula, purities);
  chemistry::settle_liquids(formula);
  const Place& where = purities.front().where;
  if (std::any_of(formula.alkalis.begin(), formula.alkalis.end(),
                  [](const auto& one) { return one.solution.has_value(); }))
    chemistry::refuse_flooded_lye(formula, where);
  else
    chemistry::refuse_starved_lye(chemistry::proportions(formula), where);
}

void buy(Formula& formula, const std::vector<BoughtPurity>& purities) {
  for (auto& alkali : formula.alkalis)
    for (const BoughtPurity& bought : purities)
      if (bought.alkali == alkali.alkali) {
        if (alkali.solution)
          throw UserError(bought.where,
                          "is the purity of dry " + chemistry::formula_of(alkali.alkali) +
                              ", which " + formula.name + " takes as the solution \"" +
                              alkali.solution->name + "\"",
                          "state the solution's strength in the studio's file");
        alkali.purity = bought.purity;
        alkali.purity_low = bought.low;
        alkali.purity_high = bought.high;
        alkali.range_assumed = bought.range_assumed;
        alkali.taken_as_exact = !bought.range_assumed && bought.low == bought.high;
      }
}

std::vector<MadeLye> tell_made_lye(Plan& plan, const Run& run, const LyeStory& story) {
  const auto batters = batters_of(story);
  if (run.lye_pot)
    throw UserError(batters.front().second, "is part of a lye solution that the batters share",
                    "what a batter got of a shared pot is its share by weight: weigh that again, "
                    "or plan the run without \"lye_pot\"");
  Batch& batch = plan.batches[split_off(plan, story)];
  std::vector<MadeLye> all;
  for (const auto& [which, where] : batters) {
    if (which.is_topping && !run.pipe)
      throw UserError(where, "is of a topping, and the run pipes none", "give \"base\"");
    const Formula& formula = which.is_topping ? run.pipe->formula : run.pour.formula;
    require_alkalis(formula, story, which);
    BatterTally* tally = &batch.pour.batter;
    if (which.is_topping)
      tally = &batch.whippings[split_off(batch.whippings, which, where)].pipe.batter;
    MadeLye made = made_of(formula, tally->weighing, story, which, run.scales);
    made.batch = batch.numbers.front();
    made.batter = !which.is_topping     ? "Base"
                  : which.whipping == 0 ? "Topping"
                                        : "Topping, whipping " + std::to_string(which.whipping);
    made.said = remark_of(made);
    take_up(*tally, made);
    all.push_back(std::move(made));
  }
  if (run.pipe) batch.pipe = sum_of(run, batch.whippings);
  plan.pour = pour_of(run, plan.batches);
  if (run.pipe) plan.pipe = pipe_of(run, plan.batches);
  collect_cautions(plan, run);
  for (std::size_t i = 0; i < all.size(); ++i)
    plan.cautions.insert(plan.cautions.begin() + static_cast<std::ptrdiff_t>(i),
                         Caution{all[i].said, Topic::lye, false, Concern::superfat});
  put_in_order(plan.cautions);
  return all;
}

}  // namespace brimwright::planning
