#pragma once

#include "chemistry/formula.h"
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
  double water = 0;  // plain water to weigh: the formula's, less what liquids and solutions bring
  double water_in_liquids = 0;    // of the additives that are liquids
  double water_in_solutions = 0;  // of the alkalis that are solutions
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

}  // namespace brimwright::chemistry
