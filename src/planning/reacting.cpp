#include "planning/weighing.h"
#include "units/share_of.h"

namespace brimwright::planning {

using chemistry::Formula;

namespace {

void add_fat(Reacting& all, const std::string& name, const chemistry::Fat& fat,
             const chemistry::SaponificationRange& saponification, const Ingredient& weighed,
             double share = 1) {
  all.fats.push_back({name, saponification, share * weighed.weighed, share * weighed.step,
                      static_cast<double>(weighed.weighings), fat.slow.has_value()});
}

/// The formula's own fats, each once: what of it is weighed by itself and what is in a blend, which
/// is weighed together.
void add_formula_fats(Reacting& all, const Formula& formula,
                      const std::vector<Ingredient>& ingredients) {
  const auto masses = fat_masses(formula, ingredients);
  std::vector<double> parts;
  for (std::size_t j = 0; j < masses.size(); ++j) {
    if (!(masses[j] > Mass{})) continue;
    const auto& fat = formula.fats[j];
    all.fats.push_back(
        {fat.fat.name, fat.saponification, masses[j], {}, 1, fat.fat.slow.has_value()});
    for (const Ingredient& i : ingredients)
      if (i.role == Role::fat && i.index == j) {
        all.fats.back().step = i.step;
        all.fats.back().weighings = static_cast<double>(i.weighings);
      }
    if (formula.blend) parts.push_back(formula.blend->parts[j].of_one());
  }
  for (const Ingredient& i : ingredients)
    if (i.role == Role::blend)
      all.blends.push_back(
          {formula.blend->name, parts, i.weighed, i.step, static_cast<double>(i.weighings)});
}

}  // namespace

std::vector<Mass> fat_masses(const Formula& formula, const std::vector<Ingredient>& ingredients) {
  std::vector<Mass> masses(formula.fats.size());
  for (const Ingredient& i : ingredients) {
    if (i.role == Role::fat) masses[i.index] += i.weighed;
    if (i.role == Role::blend)
      for (std::size_t j = 0; j < masses.size(); ++j)
        masses[j] += formula.blend->parts[j] * i.weighed;
  }
  return masses;
}

Reacting reacting(const Formula& formula, const std::vector<Ingredient>& ingredients) {
  Reacting all;
  add_formula_fats(all, formula, ingredients);
  for (const Ingredient& i : ingredients) {
    const auto weighings = static_cast<double>(i.weighings);
    if (i.role == Role::alkali) {
      const auto& a = formula.alkalis[i.index];
      all.alkalis.push_back({a.alkali, a.purity, a.purity_low, a.purity_high, i.weighed, i.step,
                             weighings, a.solution.has_value()});
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

}  // namespace brimwright::planning
