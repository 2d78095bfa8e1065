#include "reports/weigh_out.h"

#include "planning/scales.h"
#include "planning/shared_pot.h"
#include "reports/batter_on_sheet.h"
#include "reports/vessel_filling.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/share_of.h"
#include "units/weight_text.h"
#include "units/wording.h"

#include <chrono>
#include <utility>

namespace brimwright::reports {
namespace {

using planning::BatterRole;
using planning::Ingredient;
using Kind = Vessel::Kind;
using Role = WeighOutRow::Role;

Role role_of(const Ingredient& ingredient, const chemistry::Formula& formula) {
  switch (ingredient.role) {
    case planning::Role::fat:
    case planning::Role::blend:
    case planning::Role::extra_oil:
      return Role::fat;
    case planning::Role::alkali:
      return Role::alkali;
    case planning::Role::water:
      return Role::water;
    case planning::Role::additive:
      break;
  }
  const auto& additive = formula.additives[ingredient.index];
  if (additive.liquid) return Role::liquid;
  switch (additive.kind) {
    case chemistry::AdditiveKind::fragrance:
      return Role::fragrance;
    case chemistry::AdditiveKind::colour:
      return Role::colour;
    case chemistry::AdditiveKind::additive:
      break;
  }
  return Role::additive;
}

WeighOutRow ingredient_row(const Ingredient& ingredient, const std::string& key, Role role) {
  WeighOutRow row{.key = key_part(key),
                  .name = ingredient.name,
                  .material = ingredient.price_name,
                  .role = role,
                  .mass = ingredient.weighed,
                  .step = ingredient.step,
                  .towards = ingredient.shown,
                  .set_aside = ingredient.set_aside};
  note_weighings(row, ingredient.weighings);
  if (ingredient.spoonful)
    note(row, "about " + fixed(*ingredient.spoonful / us_teaspoon, 1) + " tsp, levelled");
  return row;
}

std::string about(std::chrono::minutes time) {
  if (time.count() < 90) return std::to_string(time.count()) + " min";
  return in_hours(time, time < std::chrono::hours(10) ? 1 : 0);
}

constexpr auto solution_into_water =
    "Goggles and gloves on. First stir the strong solution; it must be clear. Solution into "
    "water, never water into solution: slowly, stirring.";
constexpr auto solution_alone =
    "Goggles and gloves on. First stir the strong solution; it must be clear.";
constexpr auto solution_last =
    "The alkali dissolved: stir the strong solution until it is clear, then pour it in "
    "slowly, stirring.";

std::string peak_text(const chemistry::HeatFindings& heat) {
  if (!heat.is_peak_known)
    return heat.is_of_solution ? "Diluted, it warms." : "It heats up: a little at a time.";
  if (heat.is_of_solution)
    return "Diluted, it may warm to " + in_both_scales(heat.peak.peak) + ", from water at " +
           in_both_scales(heat.water_at) + (heat.assumed ? " (assumed)" : "") + ".";
  return "Can reach " + in_both_scales(heat.peak.peak) +
         " if all the alkali goes in at once, from water at " + in_both_scales(heat.water_at) +
         (heat.assumed ? " (assumed)" : "") + ".";
}

std::string heat_words(const BatterOnSheet& batter) {
  const auto& heat = batter.tally.heat;
  std::string text = peak_text(heat);
  if (!batter.temperatures || !batter.temperatures->lye_used_at) return text;
  text += " Use it at " + in_both_scales(*batter.temperatures->lye_used_at);
  for (const auto& cooling : heat.cooling)
    text += ", in " + chemistry::name_of(cooling.where) + " after about " +
            about(cooling.shortest) + " to " + about(cooling.longest);
  return text + ".";
}

WeighOutRow layer_row(const planning::LayerTally& layer, const planning::Run& run) {
  WeighOutRow row{.key = key_part(layer.name),
                  .name = layer.name,
                  .role = Role::batter,
                  .mass = layer.mass,
                  .step = layer.step,
                  .towards = Rounded::nearest};
  note(row, in_mm(layer.from) + " to " + in_mm(layer.to) + ", " +
                on_display(layer.mass_each, run.scales.large.step) + " each");
  if (layer.tilted) note(row, "mould tilted by " + trimmed(layer.tilted->angle.degrees(), 1) + "°");
  return row;
}

/// A batter of the batch, and where it stands in it.
struct Mixed {
  BatterOnSheet batter;
  std::string key;
  BatterRole role;
  std::size_t share = 0;  // its first in the pot's
  std::int64_t times = 1;
};

class Listing {
 public:
  Listing(const planning::Run& run, const planning::Plan& plan, const planning::Batch& batch)
      : run_(run), plan_(plan), batch_(batch) {
    mixed_.push_back({base_of(run, batch), base_key(), BatterRole::base});
    std::size_t share = 1;
    for (std::size_t i = 0; i < batch.whippings.size(); ++i) {
      const auto& whipping = batch.whippings[i];
      mixed_.push_back(
          {topping_of(run, whipping), whipping_key(i), BatterRole::topping, share, whipping.count});
      share += static_cast<std::size_t>(whipping.count);
    }
  }

  std::vector<Vessel> vessels() {
    if (batch_.numbers.front() == 1)
      for (const auto& decoration : plan_.decorations)
        if (!decoration.is_bought) melt(decoration);
    if (batch_.lye_pot) lye_pot(*batch_.lye_pot);
    for (const Mixed& mixed : mixed_)
      if (!batch_.lye_pot && mixed.batter.is_lye_chilled()) lye(mixed, true);
    for (const Mixed& mixed : mixed_) batter(mixed);
    dust();
    return std::move(vessels_);
  }

 private:
  void keep(Filling filling) {
    if (!filling.is_empty()) vessels_.push_back(filling.filled());
  }

  static Vessel vessel_of(const Mixed& mixed, Kind kind, const std::string& title) {
    return {.key = mixed.key + "." + name_of(kind),
            .kind = kind,
            .title = title,
            .batter = mixed.role,
            .times = mixed.times};
  }

  void batter(const Mixed& mixed) {
    fats(mixed);
    if (batch_.lye_pot)
      share(mixed);
    else if (mixed.batter.is_lye_chilled())
      lye_of_yesterday(mixed);
    else
      lye(mixed, false);
    additives(mixed);
    if (mixed.role == BatterRole::base) layers();
  }

  void fats(const Mixed& mixed) {
    Filling filling(vessel_of(mixed, Kind::fats, "Fats for the " + mixed.batter.name),
                    run_.scales.large.step);
    for (const Ingredient& ingredient : mixed.batter.tally.weighing.ingredients)
      if (ingredient.goes_into == "fats") filling.put(row_in(mixed, ingredient));
    const auto& temperatures = mixed.batter.temperatures;
    if (temperatures && temperatures->fats_at)
      filling.order("Fats at " + in_both_scales(*temperatures->fats_at) + ".");
    keep(std::move(filling));
  }

  WeighOutRow row_in(const Mixed& mixed, const Ingredient& ingredient) const {
    const auto& formula = mixed.batter.formula;
    WeighOutRow row = ingredient_row(ingredient, key_of(ingredient), role_of(ingredient, formula));
    const auto& all = mixed.batter.tally.weighing.ingredients;
    row.ingredient = static_cast<std::size_t>(&ingredient - all.data());
    if (ingredient.set_aside > Mass{})
      note(row, "set " + on_scale(ingredient.set_aside, run_.scales.fine.step) +
                    " of it aside for the colours");
    if (ingredient.role == planning::Role::blend)
      note(row, "all of the blend melted and stirred before it is weighed");
    if (ingredient.role != planning::Role::additive) return row;
    const auto& additive = formula.additives[ingredient.index];
    if (additive.liquid && additive.liquid->frozen) note(row, "frozen");
    if (additive.into_cooled_lye) note(row, "into the cooled lye");
    return row;
  }

  static std::string key_of(const Ingredient& ingredient) {
    switch (ingredient.role) {
      case planning::Role::fat:
      case planning::Role::blend:
      case planning::Role::alkali:
      case planning::Role::water:
        return ingredient.price_name;  // as files call it, which nobody renames
      case planning::Role::extra_oil:
      case planning::Role::additive:
        break;
    }
    return ingredient.name;
  }

  void lye(const Mixed& mixed, bool is_day_before) {
    const auto& weighing = mixed.batter.tally.weighing;
    Vessel vessel = vessel_of(mixed, Kind::lye,
                              "Lye solution for the " + mixed.batter.name + ", " +
                                  fixed(weighing.pot_strength.in_percent(), 1) + " % strong");
    vessel.is_day_before = is_day_before;
    Filling filling(std::move(vessel), run_.scales.large.step);
    bool has_ice = false;
    for (const Ingredient& ingredient : weighing.ingredients) {
      if (ingredient.goes_into != "lye") continue;
      if (ingredient.role == planning::Role::water)
        has_ice = put_water(row_in(mixed, ingredient), mixed.batter.temperatures, filling);
      else
        filling.put(row_in(mixed, ingredient));
    }
    for (const char* order : orders_for(weighing, mixed.batter.formula)) filling.order_first(order);
    if (has_ice) filling.say(melted_ice);
    filling.say(heat_words(mixed.batter));
    keep(std::move(filling));
  }

  /// What the hands do with dry alkali, with a solution that stands ready, or with both.
  static std::vector<const char*> orders_for(const planning::Weighing& weighing,
                                             const chemistry::Formula& formula) {
    bool has_dry = false, has_solution = false, has_wet = false;
    for (const Ingredient& ingredient : weighing.ingredients) {
      if (ingredient.goes_into != "lye") continue;
      const bool is_alkali = ingredient.role == planning::Role::alkali;
      const bool is_solution = is_alkali && formula.alkalis[ingredient.index].solution;
      has_dry |= is_alkali && !is_solution;
      has_solution |= is_solution;
      has_wet |= !is_alkali;
    }
    if (!has_solution) return {alkali_into_water};
    if (has_dry) return {alkali_into_water, solution_last};
    return {has_wet ? solution_into_water : solution_alone};
  }

  static constexpr auto melted_ice = "All of the ice is melted before the lye solution is used.";

  /// As liquid and as ice; true if there is any ice.
  bool put_water(WeighOutRow water, const std::optional<chemistry::HeatQuestion>& temperatures,
                 Filling& filling) const {
    const Share ice_share = temperatures ? temperatures->ice_share : Share{};
    const Mass ice = rounded_nearest(ice_share * water.mass, water.step);
    if (ice == Mass{}) {
      filling.put(std::move(water));
      return false;
    }
    const auto part = [&](const std::string& key, const std::string& name, Role role, Mass mass) {
      if (!(mass > Mass{})) return;
      WeighOutRow row{.key = key,
                      .name = name,
                      .material = water.material,
                      .role = role,
                      .mass = mass,
                      .step = water.step,
                      .towards = Rounded::nearest};
      note_weighings(row, planning::on_large_scale(run_.scales, mass).weighings);
      filling.put(std::move(row));
    };
    part(water.key, water.name, Role::water, water.mass - ice);
    part("ice", "Ice, of the same water", Role::ice, ice);
    return true;
  }

  /// Made up with plain water, some of which has evaporated.
  void lye_of_yesterday(const Mixed& mixed) {
    Mass lye;
    for (const Ingredient& ingredient : mixed.batter.tally.weighing.ingredients)
      if (ingredient.goes_into == "lye") lye += ingredient.weighed;
    Filling filling(vessel_of(mixed, Kind::share, "Lye solution for the " + mixed.batter.name), {});
    filling.put({.key = "lye-solution",
                 .name = "Lye solution made yesterday, all of it",
                 .role = Role::lye_solution,
                 .mass = lye,
                 .step = run_.scales.large.step,
                 .towards = Rounded::up,
                 .note = "topped up with plain water to this weight"});
    keep(std::move(filling));
  }

  void share(const Mixed& mixed) {
    const auto& pot = *batch_.lye_pot;
    const auto& its = pot.shares.at(mixed.share);
    Filling filling(vessel_of(mixed, Kind::share, "Lye solution for the " + mixed.batter.name),
                    planning::on_fine_scale(run_.scales, its.lye + its.top_up).step);
    filling.put({.key = "lye-solution",
                 .name = "Lye solution from the shared pot",
                 .role = Role::lye_solution,
                 .mass = its.lye,
                 .step = pot.share_step,
                 .towards = Rounded::down});
    if (its.top_up > Mass{})
      filling.put({.key = "water",
                   .name = "Plain water, stirred in",
                   .material = "water",
                   .role = Role::water,
                   .mass = its.top_up,
                   .step = its.top_up_step,
                   .towards = Rounded::nearest});
    for (const Ingredient& ingredient : mixed.batter.tally.weighing.ingredients) {
      if (ingredient.role != planning::Role::additive || ingredient.goes_into != "lye") continue;
      WeighOutRow row = row_in(mixed, ingredient);
      note(row, "into this share, not into the pot");
      filling.put(std::move(row));
    }
    keep(std::move(filling));
  }

  void lye_pot(const planning::LyePot& pot) {
    Filling filling({.key = "lye-pot",
                     .kind = Kind::lye_pot,
                     .title = "One pot of lye solution for all batters of the batch, " +
                              fixed(pot.strength.in_percent(), 1) + " % strong",
                     .is_day_before = true},
                    pot.lye_step);
    WeighOutRow water{.key = "water",
                      .name = "Water",
                      .material = "water",
                      .role = Role::water,
                      .mass = pot.water,
                      .step = pot.water_step,
                      .towards = Rounded::nearest};
    note_weighings(water, planning::on_large_scale(run_.scales, pot.water).weighings);
    const bool has_ice = put_water(std::move(water), planning::temperatures_of_pot(run_), filling);
    for (std::size_t i = 0; i < pot.alkalis.size(); ++i) {
      const auto& alkali = pot.alkalis[i];
      const std::string formula = formula_of(run_.pour.formula.alkalis[i].alkali);
      WeighOutRow row{.key = key_part(formula),
                      .name = alkali.name,
                      .material = formula,
                      .role = Role::alkali,
                      .mass = alkali.weighed,
                      .step = alkali.step,
                      .towards = Rounded::down};
      note_weighings(row, alkali.weighings);
      filling.put(std::move(row));
    }
    filling.order_first(alkali_into_water);
    if (has_ice) filling.say(melted_ice);
    filling.say(peak_text(*batch_.pot_heat));
    const std::string full = pot.full_pot ? "until pot and lye solution weigh " +
                                                on_scale(*pot.full_pot, pot.lye_step, Rounded::up)
                                          : "to " + on_scale(pot.lye, pot.lye_step, Rounded::up);
    filling.order("When it has cooled, top up with plain water " + full +
                  " (some has evaporated).");
    keep(std::move(filling));
  }

  void additives(const Mixed& mixed) {
    Filling filling(vessel_of(mixed, Kind::batter, "Add to the " + mixed.batter.name), {});
    for (const Ingredient& ingredient : mixed.batter.tally.weighing.ingredients)
      if (ingredient.goes_into == "batter") filling.put(row_in(mixed, ingredient));
    keep(std::move(filling));
  }

  void layers() {
    if (batch_.pour.layers.empty()) return;
    vessels_.push_back(jugs_of_layers(base_key() + ".layers", run_, batch_));
  }

  void melt(const planning::DecorationTally& decoration) {
    Filling filling({.key = free_key("melt." + key_part(decoration.name), vessels_),
                     .kind = Kind::melt,
                     .title = "Cast " + std::to_string(decoration.casts) + " × " + decoration.name,
                     .is_day_before = true},
                    {});
    filling.put({.key = key_part(decoration.material),
                 .name = "Melt: " + decoration.material,
                 .material = decoration.material,
                 .role = Role::melt,
                 .mass = decoration.make,
                 .step = run_.scales.large.step,
                 .towards = Rounded::nearest});
    if (plan_.pieces.batches > 1) filling.say("For the whole run, all batches together.");
    std::string text;
    if (!decoration.mould.empty())
      text = decoration.mould + ": " +
             counted(decoration.cavity_fills, "cavity fill", "cavity fills") + ", " +
             fixed_ml(decoration.volume_each) + " for one decoration";
    if (decoration.time)
      text += (text.empty() ? "" : "; ") + in_minutes(*decoration.time) + " in all";
    if (!text.empty()) filling.say(text + ".");
    keep(std::move(filling));
  }

  void dust() {
    Filling filling({.key = "dust", .kind = Kind::dust, .title = "Dust"}, {});
    for (const auto& dust : batch_.dust)
      filling.put({.key = key_part(dust.name),
                   .name = dust.name,
                   .material = dust.name,
                   .role = Role::powder,
                   .mass = dust.make,
                   .step = run_.scales.fine.step,
                   .towards = Rounded::nearest,
                   .note = trimmed(dust.each / gram, 4) + " g a piece"});
    keep(std::move(filling));
  }

  const planning::Run& run_;
  const planning::Plan& plan_;
  const planning::Batch& batch_;
  std::vector<Mixed> mixed_;
  std::vector<Vessel> vessels_;
};

}  // namespace

std::vector<Vessel> weigh_out(const planning::Run& run, const planning::Plan& plan,
                              const planning::Batch& batch) {
  return Listing(run, plan, batch).vessels();
}

std::vector<Vessel> weigh_out_beside_base(const planning::Run& run, const planning::Plan& plan,
                                          const planning::Batch& batch) {
  auto vessels = weigh_out(run, plan, batch);
  std::erase_if(vessels,
                [](const Vessel& vessel) { return vessel.batter == planning::BatterRole::base; });
  return vessels;
}

Vessel jugs_of_layers(const std::string& key, const planning::Run& run,
                      const planning::Batch& batch) {
  Filling filling({.key = key,
                   .kind = Kind::layers,
                   .title = "Layers, lowest first",
                   .batter = BatterRole::base},
                  {});
  for (const auto& layer : batch.pour.layers) {
    filling.put(layer_row(layer, run));
    for (const auto& colour : layer.colours) {
      WeighOutRow row = ingredient_row(colour, layer.name + "-" + colour.name, Role::colour);
      row.adding = layer.name;
      filling.put(std::move(row));
    }
  }
  return filling.filled();
}

std::string base_key() { return "pour"; }

std::string whipping_key(std::size_t whipping) {
  return whipping == 0 ? "pipe" : "pipe." + std::to_string(whipping + 1);
}

}  // namespace brimwright::reports
