#include "planning/weighing_workings.h"

#include "chemistry/lye_workings.h"
#include "planning/rate_working.h"
#include "units/printing.h"
#include "units/rounding.h"
#include "units/weight_text.h"

#include <string>

namespace brimwright::planning {
namespace {

using chemistry::Additive;
using chemistry::Formula;

std::string shown(const Ingredient& i) { return on_scale(i.weighed, i.step, i.shown); }

/// The weighing and what of it several workings ask for.
struct Known {
  const Formula& formula;
  const Weighing& weighing;
  Reacting reacting;
  chemistry::Proportions per_fat;

  chemistry::Reactants reactants() const {
    return {reacting.fats, reacting.alkalis, reacting.acids};
  }
};

bool is_fat(const Ingredient& i) { return i.role == Role::fat || i.role == Role::blend; }

/// Of a blend too, which is weighed as one of the fats.
Working fat_working(const Known& known, const Ingredient& i) {
  Mass all;  // before rounding
  for (const Ingredient& other : known.weighing.ingredients)
    if (is_fat(other)) all += other.exact;
  const auto& blend = known.formula.blend;
  Working working{.of = {},
                  .formula = "weigh = fats for the batter × share",
                  .with = {{"fats, before rounding", in_figures(all),
                            "batter asked for ÷ batter that a gram of fats makes"}},
                  .rounded = to_step(Rounded::up, i.step)};
  if (i.role == Role::blend) {
    working.with.push_back({"share", in_figures(blend->of_fats), blend->name});
    working.sum = in_figures(all) + " × " + in_figures(blend->of_fats);
    return working;
  }
  const Share share = known.formula.fats[i.index].share;
  working.with.push_back({"share", in_figures(share), known.formula.name});
  working.sum = in_figures(all) + " × " + in_figures(share);
  if (blend && blend->parts[i.index] > Share{}) {
    const std::string of_fats = in_figures(blend->of_fats);
    const std::string part = in_figures(blend->parts[i.index]);
    working.formula =
        "weigh = fats for the batter × (share − blend's share × its part of the blend)";
    working.with.push_back({"the blend's share", of_fats, blend->name});
    working.with.push_back({"its part of the blend", part, blend->name});
    working.sum =
        in_figures(all) + " × (" + in_figures(share) + " − " + of_fats + " × " + part + ")";
  }
  if (i.set_aside > Mass{})
    working.with.push_back({"of it set aside to disperse colours", in_figures(i.set_aside)});
  return working;
}

/// A rate "of batter" is of the batter before rounding: what the weighed fats make.
Working additive_working(const Known& known, const Ingredient& i) {
  const Additive& additive = known.formula.additives[i.index];
  const bool is_limited = additive.limit || additive.limit_of_finished_soap;
  const bool is_of_fats = additive.rate.of == RateBasis::fats;
  const Mass fats = known.weighing.fats;
  const RateWorking rate = rate_working(additive.rate, additive.bulk_density, known.formula.name);
  Working working{.of = {},
                  .formula = "weigh = rate × what the rate is of",
                  .with = rate.given,
                  .sum = rate.factor + " × " + in_figures(fats),
                  .rounded = to_step(is_limited ? Rounded::down : Rounded::nearest, i.step)};
  working.with.push_back({"fats, as weighed", in_figures(fats)});
  if (is_of_fats) return working;
  const std::string batter = in_figures(known.per_fat.batter);
  working.with.push_back({"batter that a gram of fats makes", batter, "before any rounding"});
  working.sum += " × " + batter;
  return working;
}

Working oil_working(const Known& known, const Ingredient& i) {
  const Additive& additive = known.formula.additives[i.index];
  Mass powder;
  for (const Ingredient& other : known.weighing.ingredients)
    if (other.role == Role::additive && other.index == i.index) powder = other.weighed;
  const std::string each = in_figures(additive.dispersal->oil_per_powder);
  const std::string& measured = additive.dispersal->measured;
  return {.of = {},
          .formula = "oil to disperse a colour = colour × oil for a gram of it",
          .with = {{additive.name, in_figures(powder)},
                   {"oil for a gram of it", each,
                    measured.empty() ? known.formula.name : "from " + measured}},
          .sum = in_figures(powder) + " × " + each,
          .rounded = to_step(Rounded::nearest, i.step)};
}

Working water_to_weigh(const Known& known, const Ingredient& i) {
  Working working = chemistry::water_working(known.formula, known.reactants(), known.weighing.fats,
                                             known.weighing.water_in_liquids);
  working.rounded = to_step(Rounded::nearest, i.step);
  if (i.weighed == rounded_nearest(i.exact, i.step)) return working;
  working.formula +=
      "; at least as much as the pure alkali weighs, less what liquids bring into the pot, so that "
      "it dissolves";
  working.sum.clear();
  working.rounded = to_step(Rounded::up, i.step);
  return working;
}

Working ingredient_working(const Known& known, const Ingredient& i) {
  switch (i.role) {
    case Role::fat:
    case Role::blend:
      return fat_working(known, i);
    case Role::extra_oil:
      return oil_working(known, i);
    case Role::water:
      return water_to_weigh(known, i);
    case Role::alkali: {
      Working working = chemistry::alkali_working(known.formula, i.index, known.reactants());
      working.rounded = to_step(Rounded::down, i.step);
      return working;
    }
    case Role::additive:
      break;
  }
  return additive_working(known, i);
}

std::vector<std::string> weighed_of(const Weighing& weighing, Role role) {
  std::vector<std::string> masses;
  for (const Ingredient& i : weighing.ingredients)
    if (i.role == role) masses.push_back(in_figures(i.weighed));
  return masses;
}

Working all_fats(const Weighing& weighing) {
  std::vector<std::string> terms = weighed_of(weighing, Role::blend);
  for (const std::string& fat : weighed_of(weighing, Role::fat)) terms.push_back(fat);
  return {.of = "fats_g",
          .formula = "fats = all fats of the formula, as weighed",
          .sum = added(terms),
          .comes_to = in_figures(weighing.fats)};
}

Working all_water(const Weighing& weighing) {
  std::vector<std::string> terms = weighed_of(weighing, Role::water);
  const bool has_solution = weighing.water_in_solutions > Mass{};
  if (weighing.water_in_liquids > Mass{}) terms.push_back(in_figures(weighing.water_in_liquids));
  if (has_solution) terms.push_back(in_figures(weighing.water_in_solutions));
  Working working{
      .of = "water_g",
      .formula = "water = plain water as weighed + water in liquids that stand in for it",
      .with = {{"water in liquids", in_figures(weighing.water_in_liquids)}},
      .sum = added(terms),
      .comes_to = in_figures(weighing.water)};
  if (has_solution) {
    working.formula += " + water in the solutions";
    working.with.push_back({"water in the solutions", in_figures(weighing.water_in_solutions),
                            "solution × (1 − strength)"});
  }
  working.with.push_back({"and beside it, in acids", in_figures(weighing.water_in_acids)});
  return working;
}

}  // namespace

std::vector<Working> weighing_workings(const Formula& formula,
                                       const chemistry::Proportions& per_fat,
                                       const Weighing& weighing) {
  const Known known{formula, weighing, reacting(formula, weighing.ingredients), per_fat};
  std::vector<Working> all;
  for (std::size_t k = 0; k < weighing.ingredients.size(); ++k) {
    Working working = ingredient_working(known, weighing.ingredients[k]);
    working.of = "ingredients." + std::to_string(k) + ".g";
    working.comes_to = shown(weighing.ingredients[k]);
    all.push_back(std::move(working));
  }
  all.push_back(all_fats(weighing));
  all.push_back(all_water(weighing));
  append_at(all, "",
            chemistry::strength_workings(known.reactants(),
                                         weighing.water + weighing.water_in_acids, weighing.fats));
  Working superfat = chemistry::superfat_working(formula, known.reactants(), weighing.superfat);
  superfat.of = "superfat_percent.effective";
  superfat.comes_to = in_figures(weighing.superfat.nominal);
  all.push_back(std::move(superfat));
  return all;
}

}  // namespace brimwright::planning
