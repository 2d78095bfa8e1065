#include "planning/bench_heat.h"

#include "chemistry/alkali_data.h"
#include "units/share_of.h"

namespace brimwright::planning {
namespace {

using chemistry::Additive;
using chemistry::FatsCharge;
using chemistry::LyeCharge;

double water_in_one_gram(const Additive& additive) {
  if (additive.liquid) return additive.liquid->water.of_one();
  return additive.contains_acid ? additive.contains_acid->water().of_one() : 0;
}

void add_to_lye(LyeCharge& lye, const Additive& additive, Mass weighed) {
  const double water = water_in_one_gram(additive);
  const bool frozen = additive.liquid && additive.liquid->frozen;
  (frozen ? lye.ice : lye.water) += weighed * water;
  lye.other += weighed * (1 - water);
  if (const auto& acid = additive.contains_acid)
    lye.acid_mol += acid->share * weighed * acid->koh_g_per_g / gram /
                    chemistry::molar_mass_g_per_mol(chemistry::Alkali::potassium_hydroxide);
}

void add_to_fats(FatsCharge& fats, const Additive& additive, Mass weighed) {
  const double water = water_in_one_gram(additive);
  fats.water += weighed * water;
  fats.other += weighed * (1 - water);
}

/// What of an alkali, as weighed, is none: the water of a solution that stands ready, or impurity.
void add_to_lye(LyeCharge& lye, const chemistry::FormulaAlkali& alkali, Mass weighed) {
  const Mass pure = alkali.purity * weighed;
  if (alkali.solution) {
    lye.alkalis.push_back({alkali.alkali, pure, weighed - pure, alkali.solution->kept_at});
    return;
  }
  lye.alkalis.push_back({alkali.alkali, pure});
  lye.other += weighed - pure;
}

FatsCharge fats_charge_of(const chemistry::Formula& formula, const Weighing& weighing) {
  FatsCharge fats;
  for (const Ingredient& i : weighing.ingredients) {
    if (i.role == Role::fat || i.role == Role::blend || i.role == Role::extra_oil)
      fats.fats += i.weighed;
    if (i.role == Role::additive && i.goes_into != "lye")
      add_to_fats(fats, formula.additives[i.index], i.weighed);
  }
  return fats;
}

}  // namespace

LyeCharge lye_charge_of(const chemistry::Formula& formula, const Weighing& weighing) {
  LyeCharge lye;
  lye.water = weighing.plain_water();
  for (const Ingredient& i : weighing.ingredients) {
    if (i.role == Role::alkali) add_to_lye(lye, formula.alkalis[i.index], i.weighed);
    // What goes in once it has cooled takes up none of the heat.
    if (i.role == Role::additive && i.goes_into == "lye" &&
        !formula.additives[i.index].into_cooled_lye)
      add_to_lye(lye, formula.additives[i.index], i.weighed);
  }
  return lye;
}

chemistry::HeatFindings heat_of(const chemistry::HeatQuestion& question,
                                const chemistry::Formula& formula, const Weighing& weighing) {
  return chemistry::heat_findings(question, formula.name, lye_charge_of(formula, weighing),
                                  weighing.plain_water(), fats_charge_of(formula, weighing));
}

chemistry::HeatFindings heat_of_pot(const chemistry::HeatQuestion& question,
                                    const chemistry::Formula& formula, const LyePot& pot) {
  LyeCharge lye;
  lye.water = pot.water;  // acids go into a batter's share, when the lye is shared
  for (std::size_t k = 0; k < pot.alkalis.size(); ++k) {
    add_to_lye(lye, formula.alkalis[k], pot.alkalis[k].weighed);
  }
  chemistry::HeatQuestion of_pot = question;
  of_pot.fats_at.reset();
  of_pot.batter_below.reset();
  return chemistry::heat_findings(of_pot, "Shared lye solution", lye, pot.water, {});
}

}  // namespace brimwright::planning
