#include "reports/batter_sheet.h"

#include "units/printing.h"
#include "units/share_of.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <algorithm>
#include <chrono>

namespace brimwright::reports {
namespace {

using planning::Ingredient;
using planning::Weighing;

/// What belongs beside a weight.
std::string note_of(const Ingredient& ingredient, Mass set_aside_step) {
  std::string note;
  const auto add = [&](const std::string& words) { note += (note.empty() ? "" : "; ") + words; };
  if (ingredient.weighings > 1)
    add("too much for the scale: weigh in " + std::to_string(ingredient.weighings) + " portions");
  if (ingredient.spoonful)
    add("about " + fixed(*ingredient.spoonful / us_teaspoon, 1) + " tsp, levelled");
  if (ingredient.set_aside > Mass{})
    add("set " + on_scale(ingredient.set_aside, set_aside_step) + " of it aside for the colours");
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

constexpr auto alkali_into_water =
    "Goggles and gloves on. Alkali into water, never water into alkali: a little at a time, "
    "stirring.";

std::string about(std::chrono::minutes time) {
  if (time.count() < 90) return std::to_string(time.count()) + " min";
  return in_hours(time, time < std::chrono::hours(10) ? 1 : 0);
}

/// How much of the plain water goes in as ice.
void add_ice(const BatterOnSheet& batter, Sheet& sheet) {
  if (!batter.temperatures || batter.temperatures->ice_share == Share{}) return;
  for (const auto& ingredient : batter.tally.weighing.ingredients)
    if (ingredient.role == planning::Role::water)
      sheet.blocks.push_back(SheetWords{
          "Of the plain water " +
          on_scale(batter.temperatures->ice_share * ingredient.weighed, ingredient.step) +
          " as ice, all of it melted before the lye solution is used."});
}

std::string peak_text(const chemistry::HeatFindings& heat) {
  return "Can reach " + in_both_scales(heat.peak.peak) +
         " if all the alkali goes in at once, from water at " + in_both_scales(heat.water_at) +
         (heat.assumed ? " (assumed)" : "") + ".";
}

void add_heat(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& heat = batter.tally.heat;
  std::string text = peak_text(heat);
  if (batter.temperatures && batter.temperatures->lye_used_at) {
    text += " Use it at " + in_both_scales(*batter.temperatures->lye_used_at);
    for (const auto& cooling : heat.cooling)
      text += ", in " + chemistry::name_of(cooling.where) + " after about " +
              about(cooling.shortest) + " to " + about(cooling.longest);
    text += ".";
  }
  sheet.blocks.push_back(SheetWords{text});
}

/// Of its formula, and weighed for a batter as large: whippings of another size have their own.
bool is_share_of(const planning::PotShare& share, const BatterOnSheet& batter) {
  Mass alkali;
  for (const auto& ingredient : batter.tally.weighing.ingredients)
    if (ingredient.role == planning::Role::alkali) alkali += ingredient.weighed;
  return share.batter.starts_with(batter.formula.name) &&
         abs(share.alkali - alkali) <= 1e-6 * alkali;
}

}  // namespace

bool BatterOnSheet::is_lye_chilled() const {
  return temperatures && temperatures->is_lye_chilled();
}

BatterOnSheet base_of(const planning::Run& run, const planning::Batch& batch) {
  return {batch.pipe ? "base" : "batter", batch.pour.batter, run.pour.formula,
          run.pour.temperatures, run.scales.fine.step};
}

BatterOnSheet topping_of(const planning::Run& run, const planning::Whipping& whipping) {
  const bool is_one_go = run.batch.whippings == 1;
  return {is_one_go ? "topping"
          : whipping.count == 1
              ? "topping, one whipping"
              : "topping, each of " + std::to_string(whipping.count) + " whippings",
          whipping.pipe.batter, run.pipe->formula, run.pipe->temperatures, run.scales.fine.step};
}

WeighList weigh_list(const Weighing& weighing, const std::string& goes_into, Mass set_aside_step) {
  WeighList list;
  Mass running;
  Mass step = finest_step(weighing, goes_into);
  for (const auto& ingredient : weighing.ingredients) {
    if (ingredient.goes_into != goes_into) continue;
    // What is set aside for the colours stands in a cup of its own.
    running += ingredient.weighed - ingredient.set_aside;
    if (ingredient.set_aside > Mass{}) step = std::min(step, set_aside_step);
    list.rows.push_back({ingredient.name, note_of(ingredient, set_aside_step),
                         on_scale(ingredient.weighed, ingredient.step, ingredient.shown),
                         beside_scale(ingredient.weighed, ingredient.step, ingredient.shown),
                         goes_into == "batter" ? "" : on_scale(running, step)});
  }
  return list;
}

void add_lye(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  sheet.blocks.push_back(SheetStep{"Lye solution for the " + batter.name + ", " +
                                   fixed(weighing.pot_strength.in_percent(), 1) + " % strong"});
  sheet.blocks.push_back(weigh_list(weighing, "lye", batter.fine_step));
  sheet.blocks.push_back(SheetWords{alkali_into_water, true});
  add_ice(batter, sheet);
  add_heat(batter, sheet);
}

void add_ready_lye(const BatterOnSheet& batter, const planning::Batch& batch, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"Lye solution for the " + batter.name});
  if (!batch.lye_pot) {
    const auto& weighing = batter.tally.weighing;
    const Mass lye = lye_of(weighing);
    sheet.blocks.push_back(WeighList{
        {{"Lye solution made yesterday, all of it", "topped up with plain water to this weight",
          on_scale(lye, finest_step(weighing, "lye")),
          beside_scale(lye, finest_step(weighing, "lye")), "", false}}});
    return;
  }
  WeighList list;
  const auto& pot = *batch.lye_pot;
  for (const auto& share : pot.shares) {
    if (!is_share_of(share, batter)) continue;
    const auto sum = [&](Mass so_far) {
      return on_scale(so_far, std::min(pot.share_step, share.top_up_step));
    };
    list.rows.push_back({"Lye solution from the shared pot",
                         share.batter == batter.formula.name ? "" : "for " + share.batter,
                         on_scale(share.lye, pot.share_step, Rounded::down),
                         beside_scale(share.lye, pot.share_step, Rounded::down), sum(share.lye),
                         false});
    if (share.top_up > Mass{})
      list.rows.push_back({"Plain water, stirred in", "", on_scale(share.top_up, share.top_up_step),
                           beside_scale(share.top_up, share.top_up_step),
                           sum(share.lye + share.top_up), false});
  }
  for (const auto& ingredient : batter.tally.weighing.ingredients)
    if (ingredient.role == planning::Role::additive && ingredient.goes_into == "lye")
      list.rows.push_back({ingredient.name, "into this share, not into the pot",
                           on_scale(ingredient.weighed, ingredient.step, ingredient.shown),
                           beside_scale(ingredient.weighed, ingredient.step, ingredient.shown),
                           ""});
  sheet.blocks.push_back(list);
}

void add_lye_pot(const planning::LyePot& pot, const chemistry::HeatFindings& heat, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"One pot of lye solution for all batters of the batch, " +
                                   fixed(pot.strength.in_percent(), 1) + " % strong"});
  WeighList list;
  Mass running;
  const Mass step = std::min(pot.share_step, pot.water_step);
  const auto add = [&](const std::string& name, Mass mass, Mass its_step, Rounded towards) {
    running += mass;
    list.rows.push_back({name, "", on_scale(mass, its_step, towards),
                         beside_scale(mass, its_step, towards),
                         on_scale(running, std::min(step, its_step))});
  };
  add("Water", pot.water, pot.water_step, Rounded::nearest);
  for (const auto& alkali : pot.alkalis)
    add(alkali.name, alkali.weighed, alkali.step, Rounded::down);
  sheet.blocks.push_back(list);
  sheet.blocks.push_back(SheetWords{alkali_into_water, true});
  sheet.blocks.push_back(SheetWords{peak_text(heat)});
  const std::string full = pot.full_pot ? "until pot and lye solution weigh " +
                                              on_scale(*pot.full_pot, pot.lye_step, Rounded::up)
                                        : "to " + on_scale(pot.lye, pot.lye_step, Rounded::up);
  sheet.blocks.push_back(SheetWords{
      "When it has cooled, top up with plain water " + full + " (some has evaporated).", true});
}

void add_fats(const BatterOnSheet& batter, Sheet& sheet) {
  sheet.blocks.push_back(SheetStep{"Fats for the " + batter.name});
  sheet.blocks.push_back(weigh_list(batter.tally.weighing, "fats", batter.fine_step));
  if (batter.temperatures && batter.temperatures->fats_at)
    sheet.blocks.push_back(
        SheetWords{"Fats at " + in_both_scales(*batter.temperatures->fats_at) + ".", true});
}

void add_additives(const BatterOnSheet& batter, Sheet& sheet) {
  const auto& weighing = batter.tally.weighing;
  const auto list = weigh_list(weighing, "batter", batter.fine_step);
  if (!list.rows.empty()) {
    sheet.blocks.push_back(SheetStep{"Add to the " + batter.name});
    sheet.blocks.push_back(list);
  }
  const auto& superfat = weighing.superfat;
  sheet.blocks.push_back(
      SheetWords{"All " + batter.name + " together " + on_scale(weighing.batter, batter.fine_step) +
                 " (" + beside_scale(weighing.batter, batter.fine_step) +
                 "). Superfat as weighed " + fixed(superfat.nominal.in_percent(), 1) +
                 " %, likely " + chemistry::lowest_in_words(superfat.likely_low) + " to " +
                 chemistry::highest_in_words(superfat.likely_high) + "."});
}

}  // namespace brimwright::reports
