#include "reports/batter_sheet.h"

#include "units/printing.h"

#include <algorithm>
#include <chrono>

namespace brimwright::reports {
namespace {

using planning::Ingredient;
using planning::Weighing;

/// What belongs beside a weight.
std::string note_of(const Ingredient& ingredient) {
  std::string note;
  const auto add = [&](const std::string& words) { note += (note.empty() ? "" : "; ") + words; };
  if (ingredient.weighings > 1)
    add("the scale holds less: in " + std::to_string(ingredient.weighings) + " goes");
  if (ingredient.spoonful)
    add("about " + fixed(*ingredient.spoonful / us_teaspoon, 1) + " tsp, levelled");
  if (ingredient.set_aside > Mass{})
    add("set " + sheet_grams(ingredient.set_aside, 0.1 * gram) + " of it aside for the colours");
  return note;
}

/// The lye itself: alkalis, water, and what else goes into it.
Mass lye_of(const Weighing& weighing) {
  Mass lye;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.goes_into == "lye") lye += ingredient.weighed;
  return lye;
}

Mass finest_step(const Weighing& weighing, const std::string& goes_into) {
  Mass finest = kilogram;
  for (const auto& ingredient : weighing.ingredients)
    if (ingredient.goes_into == goes_into) finest = std::min(finest, ingredient.step);
  return finest;
}

/// The alkali last, as it goes into the water and never the water on it.
std::vector<Ingredient> water_first(std::vector<Ingredient> ingredients) {
  std::stable_partition(ingredients.begin(), ingredients.end(), [](const Ingredient& ingredient) {
    return ingredient.role != planning::Role::alkali;
  });
  return ingredients;
}

std::string about(std::chrono::minutes time) {
  if (time.count() < 90) return std::to_string(time.count()) + " min";
  const double hours = static_cast<double>(time.count()) / 60;
  return trimmed(hours, hours < 10 ? 1 : 0) + " h";
}

/// How much of the plain water goes in as ice.
void add_ice(const BatterOnSheet& batter, Sheet& sheet) {
  if (!batter.warmth || batter.warmth->ice_share == Share{}) return;
  Mass water;
  for (const auto& ingredient : batter.tally.weighing.ingredients)
    if (ingredient.role == planning::Role::water) water += ingredient.weighed;
  sheet.blocks.push_back(SheetWords{"Of the plain water " +
                                    sheet_grams(batter.warmth->ice_share.of_one() * water, gram) +
                                    " as ice, all of it melted before the lye is used."});
}

void add_heat(const BatterOnSheet& batter, Sheet& sheet) {
  if (!batter.tally.heat) return;
  const auto& heat = *batter.tally.heat;
  std::string text = "Gets as hot as " + in_both_scales(heat.peak.peak) + " from water at " +
                     in_both_scales(heat.water_at) + (heat.assumed ? " (assumed)" : "") +
                     " when all goes in at once.";
  if (batter.warmth && batter.warmth->lye_used_at) {
    text += " Use it at " + in_both_scales(*batter.warmth->lye_used_at);
    for (const auto& cooling : heat.cooling)
      text += ", in " + chemistry::name_of(cooling.where) + " after about " +
              about(cooling.shortest) + " to " + about(cooling.longest);
    text += ".";
  }
  sheet.blocks.push_back(SheetWords{text});
}

}  // namespace

bool BatterOnSheet::is_lye_chilled() const {
  if (!warmth || !warmth->lye_used_at) return false;
  // 20 degC: the room where she says none, as for the peak
  return *warmth->lye_used_at < warmth->lye_made_at.value_or(Temperature::in_celsius(20));
}

BatterOnSheet base_of(const planning::Run& run, const planning::Plan& plan) {
  return {plan.pipe ? "base" : "batter", plan.pour.batter, run.pour.formula, run.pour.warmth};
}

BatterOnSheet topping_of(const planning::Run& run, const planning::Plan& plan) {
  return {"topping", plan.pipe->batter, run.pipe->formula, run.pipe->warmth};
}

std::string sheet_grams(Mass mass, Mass step) {
  return fixed(mass / gram, decimals_for(step)) + " g";
}

std::string sheet_ounces(Mass mass) { return fixed(mass / ounce, 2) + " oz"; }

std::string sheet_count(std::int64_t n, const std::string& one, const std::string& many) {
  return std::to_string(n) + " " + (n == 1 ? one : many);
}

WeighList weigh_list(const Weighing& weighing, const std::string& goes_into) {
  WeighList list;
  Mass running;
  const Mass step = finest_step(weighing, goes_into);
  for (const auto& ingredient : water_first(weighing.ingredients)) {
    if (ingredient.goes_into != goes_into) continue;
    running += ingredient.weighed;
    list.rows.push_back({ingredient.name, note_of(ingredient),
                         sheet_grams(ingredient.weighed, ingredient.step),
                         sheet_ounces(ingredient.weighed),
                         goes_into == "batter" ? "" : sheet_grams(running, step)});
  }
  return list;
}

void add_lye(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  sheet.blocks.push_back(SheetStep{"Lye for the " + batter.name + ", " +
                                   fixed(weighing.lye_strength.in_percent(), 1) + " % strong"});
  sheet.blocks.push_back(weigh_list(weighing, "lye"));
  sheet.blocks.push_back(SheetWords{"Alkali into water, a little at a time, stirring.", true});
  add_ice(batter, sheet);
  add_heat(batter, sheet);
}

void add_ready_lye(const BatterOnSheet& batter, const planning::Plan& plan, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"Lye for the " + batter.name});
  if (!plan.lye_pot) {
    const auto& weighing = batter.tally.weighing;
    const Mass lye = lye_of(weighing);
    sheet.blocks.push_back(WeighList{
        {{"Lye of the day before, all of it", "steamed-off water put back up to this weight",
          sheet_grams(lye, finest_step(weighing, "lye")), sheet_ounces(lye), "", false}}});
    return;
  }
  WeighList list;
  const auto& pot = *plan.lye_pot;
  for (const auto& share : pot.shares) {
    if (share.batter != batter.formula.name) continue;
    const auto sum = [&](Mass so_far) { return sheet_grams(so_far, pot.share_step); };
    list.rows.push_back({"Lye out of the shared pot", "", sheet_grams(share.lye, pot.share_step),
                         sheet_ounces(share.lye), sum(share.lye), false});
    if (share.top_up > Mass{})
      list.rows.push_back({"Plain water stirred into it", "",
                           sheet_grams(share.top_up, pot.water_step), sheet_ounces(share.top_up),
                           sum(share.lye + share.top_up), false});
  }
  for (const auto& ingredient : batter.tally.weighing.ingredients)
    if (ingredient.role == planning::Role::additive && ingredient.goes_into == "lye")
      list.rows.push_back({ingredient.name, "into this share, not into the pot",
                           sheet_grams(ingredient.weighed, ingredient.step),
                           sheet_ounces(ingredient.weighed), ""});
  sheet.blocks.push_back(list);
}

void add_lye_pot(const planning::LyePot& pot, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"One pot of lye for both batters, " +
                                   fixed(pot.strength.in_percent(), 1) + " % strong"});
  WeighList list;
  Mass running;
  const Mass step = std::min(pot.share_step, pot.water_step);
  const auto add = [&](const std::string& name, Mass mass, Mass its_step) {
    running += mass;
    list.rows.push_back({name, "", sheet_grams(mass, its_step), sheet_ounces(mass),
                         sheet_grams(running, std::min(step, its_step))});
  };
  add("Water", pot.water, pot.water_step);
  for (const auto& alkali : pot.alkalis) add(alkali.name, alkali.weighed, alkali.step);
  sheet.blocks.push_back(list);
  sheet.blocks.push_back(SheetWords{"Alkali into water, a little at a time, stirring.", true});
  const std::string back_to =
      pot.full_pot ? "pot and lye weigh " + sheet_grams(*pot.full_pot, pot.share_step)
                   : "the lye weighs " + sheet_grams(pot.lye, pot.share_step);
  sheet.blocks.push_back(
      SheetWords{"Cooled, put steamed-off water back until " + back_to + " again.", true});
}

void add_fats(const BatterOnSheet& batter, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"Fats of the " + batter.name});
  sheet.blocks.push_back(weigh_list(batter.tally.weighing, "fats"));
  if (batter.warmth && batter.warmth->fats_at)
    sheet.blocks.push_back(
        SheetWords{"Fats at " + in_both_scales(*batter.warmth->fats_at) + ".", true});
}

void add_additives(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  const auto list = weigh_list(weighing, "batter");
  if (!list.rows.empty()) {
    sheet.blocks.push_back(SheetStep{"Into the " + batter.name});
    sheet.blocks.push_back(list);
  }
  const auto& superfat = weighing.superfat;
  sheet.blocks.push_back(SheetWords{"All " + batter.name + " together " +
                                    sheet_grams(weighing.batter, 0.1 * gram) + " (" +
                                    sheet_ounces(weighing.batter) + "). Superfat comes out at " +
                                    fixed(superfat.nominal.in_percent(), 1) + " %, likely " +
                                    fixed(superfat.likely_low.in_percent(), 1) + " to " +
                                    fixed(superfat.likely_high.in_percent(), 1) + " %."});
}

}  // namespace brimwright::reports
