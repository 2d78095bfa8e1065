#include "chemistry/acid_cautions.h"

#include "units/printing.h"
#include "units/wording.h"

#include <cmath>

namespace brimwright::chemistry {
namespace {

std::string takes_up(const ContainedAcid& acid) {
  return trimmed(acid.share.of_one() * acid.koh_g_per_g * 1000, 1) + " mg KOH/g";
}

void caution_on_one(const Additive& additive, std::vector<Remark>& cautions) {
  if (additive.denies_acid)
    cautions.push_back(
        {Severity::caution,
         additive.name +
             " is given as holding no acid. If it does hold some, it uses up alkali that is not "
             "counted: the soap comes out softer, with more superfat than is shown."});
  const auto& acid = additive.contains_acid;
  if (!acid) return;
  if (acid->confirmed)
    cautions.push_back(
        {Severity::caution,
         additive.name + " is taken to use up " + takes_up(*acid) +
             ", more than such a thing usually does, because the formula confirms it. If it is "
             "weaker, the soap comes out lye-heavy: read the bottle again."});
  if (acid->name.empty())
    cautions.push_back({Severity::note, additive.name + " uses up " + takes_up(*acid) +
                                            ", as typed in the formula and taken as exact."});
}

/// Names of the acids that bring water.
std::string bringers(const Formula& formula) {
  std::string names;
  for (const Additive& additive : formula.additives)
    if (additive.contains_acid && !additive.liquid && additive.contains_acid->water() > 1 * percent)
      names += (names.empty() ? "" : ", ") + additive.name;
  return names;
}

void tell_water(const Formula& formula, const Proportions& per_fat, std::vector<Remark>& cautions) {
  const Share stated = per_fat.stated_strength, batter = per_fat.lye_strength;
  // Half a point of strength is what a maker can tell: common practice, no source.
  if ((stated - batter).in_percent() < 0.5) return;
  const Share pot = per_fat.pot_strength;
  const bool is_apart = std::abs((pot - batter).in_percent()) >= 0.5;
  cautions.push_back(
      {Severity::note,
       formula.name + ": the water in " + bringers(formula) + " comes beside the formula's own, " +
           in_percent(Share::of_one(per_fat.water_in_acids)) + " of the fats. The lye, " +
           in_percent(stated) + " strong by the formula, is " + in_percent(pot) + " in its pot" +
           (is_apart ? " and " + in_percent(batter) + " in the batter" : "") +
           ". To have that water stand in for plain water, list it under "
           "\"liquids\"."});
}

}  // namespace

std::vector<Remark> acid_cautions(const Formula& formula, const Proportions& per_fat) {
  std::vector<Remark> cautions;
  for (const Additive& additive : formula.additives) caution_on_one(additive, cautions);
  tell_water(formula, per_fat, cautions);
  return cautions;
}

}  // namespace brimwright::chemistry
