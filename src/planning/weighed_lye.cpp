#include "planning/weighed_lye.h"

#include "chemistry/liquids.h"
#include "chemistry/lye_solution.h"
#include "chemistry/proportions.h"
#include "planning/batch_parting.h"
#include "planning/batch_sums.h"
#include "planning/lye_mend.h"
#include "planning/plan_cautions.h"
#include "planning/scales.h"
#include "units/printing.h"
#include "units/share_of.h"
#include "units/weight_text.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brimwright::planning {
namespace {

using chemistry::Formula;

std::string in_percent(Share superfat) { return chemistry::lowest_in_words(superfat); }

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
  if (made.mends.is_beyond_mending)
    return {Severity::danger, burns + what +
                                  ". Putting it right would take more fats than there are: do not "
                                  "use this lye solution for this batch."};
  const std::string least =
      made.mends.to_zero && made.mends.to_aim &&
              listed(*made.mends.to_zero) != listed(*made.mends.to_aim)
          ? " The least that keeps 19 in 20 above zero: " + listed(*made.mends.to_zero) + "."
          : "";
  return {Severity::danger, burns + what +
                                ". Do not pour it as it is: below zero lye is left over and burns. "
                                "To fix it, melt and stir in of its own fats: " +
                                listed(*made.mends.to_aim) + "; then it is " +
                                in_percent(made.mends.to_aim->after.superfat.nominal) + "." +
                                least + " Never fix it with an acid."};
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
  made.mends = mends_of(made.as_it_is, made.formula, made.as_planned.lye_strength, scales);
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
  Batch& batch = plan.batches[split_off(plan, story.batch, story.batch_where)];
  std::vector<MadeLye> all;
  for (const auto& [which, where] : batters) {
    if (which.is_topping && !run.pipe)
      throw UserError(where, "is of a topping, and the run pipes none", "give \"base\"");
    const Formula& formula = which.is_topping ? run.pipe->formula : run.pour.formula;
    require_alkalis(formula, story, which);
    BatterTally* tally = &batch.pour.batter;
    if (which.is_topping)
      tally = &batch.whippings[split_off(batch.whippings, which.whipping, where)].pipe.batter;
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
