#pragma once

#include "chemistry/formula.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"

#include <vector>

namespace brimwright::chemistry {

/// What goes with one gram of a formula's fats, in grams, before any rounding. Orders as in
/// `Formula`.
struct Proportions {
  std::vector<double> fats;       // the shares
  std::vector<double> alkalis;    // as weighed, impure
  std::vector<double> additives;  // as weighed
  std::vector<double> extra_oil;  // dispersing oil beyond the formula, for each additive (else 0)
  std::vector<double> set_aside;  // of each fat: what is taken out of it to disperse colours
  double water = 0;               // plain water to weigh: the formula's, less what liquids bring
  double water_in_liquids = 0;    // of the additives that are liquids
  double water_in_acids = 0;      // of vinegar and the like: beside the formula's own water
  double batter = 0;              // the sum of all but set_aside: batter for each gram of fats

  double pure_alkali = 0;
  // The three ways of saying water, all of it counted, that in liquids and acids too.
  Share lye_strength;          // pure alkali / (pure alkali + water)
  double water_to_alkali = 0;  // water / pure alkali
  Share water_of_fats;
  Share pot_strength;  // of the lye while what goes into the batter is not yet in
  // The same two with the formula's own water alone, acids' left out: what its "water" states.
  Share stated_strength, stated_pot_strength;
};

/// Per gram of fats, with shares p, values s (mg/g), superfat sf, purity u, strength c:
///
///   alkali  n = [sum p s / 1000 * (M_alkali / M_KOH) * (1 - sf) + acids' need] / u
///   water   w = n u (1 - c) / c
///
/// with the sum over all that is fat, wherever it comes in.
///
/// The formula's water stays as the maker stated it: what an acid additive brings of water (vinegar
/// 95 %) comes on top, is weighed within the additive, and makes the lye weaker: in the pot where
/// the additive goes into the lye, in the batter anyhow. To have it stand in for the formula's
/// water, the same thing is listed as a liquid; then plain water gives way to it.
/// Additives by share of the batter solve F = 1 + n + w + a + f F (they may themselves need alkali:
/// solved exactly, linear). Rates "of fats" are of the formula's fats alone. Refuses, at the
/// formula's file, additives that leave no batter.
Proportions proportions(const Formula& formula);

/// Density of the plain batter at the formula's pour temperature, volumes taken as additive (good
/// to 1-2 %): fats, lye solution and additives each by their own density. What is impure in the
/// alkali is taken to be dissolved and as dense as the alkali; a lye of both alkalis has, by mass,
/// the specific volumes of the two lyes of its strength.
struct BatterDensity {
  Density computed;
  Density used;                 // the measured one where the formula has it
  std::vector<Remark> remarks;  // densities estimated, taken as water's or of a fat not yet molten;
                                // a measured one far from the computed
};
BatterDensity batter_density(const Formula& formula, const Proportions& per_fat);

/// Volume of the lye of `alkalis`, as weighed and in the formula's order, in `water`, at the
/// formula's pour temperature. Impurities count as alkali here, so the strength is that of the
/// alkali as weighed; each alkali takes water in proportion to its mass: lyes of one strength, side
/// by side.
Volume lye_volume(const Formula& formula, const std::vector<Mass>& alkalis, Mass water);

/// Dispersing oil beyond the formula for each additive (zero elsewhere), from the additives'
/// masses.
std::vector<Mass> extra_oils_for(const Formula& formula, const std::vector<Mass>& additives);

/// Alkalis to weigh for fats, extra dispersing oils and additives as they are weighed: the
/// formula's superfat on everything that is fat, acids' need added, divided by purity. Not rounded.
std::vector<Mass> alkalis_for(const Formula& formula, const std::vector<Mass>& fats,
                              const std::vector<Mass>& extra_oils,
                              const std::vector<Mass>& additives);

/// All the water that goes with alkalis as weighed, in the formula's own way of stating it, before
/// what liquids bring of it is taken off (`water_in_liquids`). Not rounded.
/// `all_fats` are the formula's fats together, without extra dispersing oil.
Mass water_for(const Formula& formula, const std::vector<Mass>& alkalis, Mass all_fats);

/// What to watch before weighing: a lye strength that makes the batter very wet or fast, what
/// liquids do in it.
std::vector<Remark> rate_cautions(const Formula& formula, const Proportions& per_fat);

/// What is doubtful in the formula's figures: a supplier's saponification value far from the
/// published range (a danger where it was confirmed and the superfat may be below zero), acids
/// beyond what a thing has, values taken as exact.
std::vector<Remark> data_doubts(const Formula& formula, const Proportions& per_fat);

}  // namespace brimwright::chemistry
