#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "chemistry/superfat.h"
#include "planning/run.h"
#include "units/remark.h"
#include "units/rounded_text.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

enum class Role { fat, blend, extra_oil, alkali, water, additive };

/// What a gram of a material that she makes ahead is made of.
struct MadeOf {
  std::string name, price_name;
  double in_a_gram;
};

/// One thing to weigh for a batter.
struct Ingredient {
  std::string name;        // for people: "Olive oil", "NaOH 99 %"
  std::string price_name;  // how the run's prices call it
  Role role;
  std::size_t index = 0;             // in the formula's fats, alkalis or (extra oil too) additives
  std::string goes_into;             // "fats", "lye", "batter"
  Mass exact;                        // before rounding
  Mass weighed;                      // a multiple of `step`
  Mass step;                         // of the scale it is weighed on
  std::int64_t weighings = 1;        // goes on that scale
  Rounded shown = Rounded::nearest;  // where a unit cannot show it whole: alkali, and what has a
                                     // limit, down; fats, and what holds fat or acid, up
  std::optional<Volume> spoonful;    // the same by the spoon, where a bulk density is known
  Mass set_aside;                    // of a fat: the part that first disperses colours
  std::vector<MadeOf> made_of = {};  // where she makes it ahead herself
};

/// A batter on the maker's scales.
struct Weighing {
  /// Blend, fats, extra oils, water, what else goes into the lye, alkalis, what goes into the
  /// cooled lye, other additives; each kind in the formula's order. The alkali is listed after what
  /// it goes into.
  std::vector<Ingredient> ingredients;
  Mass batter;              // the sum of what is weighed
  Mass fats;                // the formula's fats
  Mass naoh, koh;           // as bought; of a solution the pure alkali in it
  Mass water;               // all of it: plain, in solutions, and in liquids that stand in for it
  Mass water_in_liquids;    // milk's, purée's, brine's
  Mass water_in_solutions;  // of lye that stands ready
  Mass water_in_acids;      // vinegar's and the like, beside `water`

  Mass plain_water() const { return water - water_in_liquids - water_in_solutions; }
  // Pure alkali / (pure alkali + water), from the weighed masses and with all water, acids' too:
  Share lye_strength;  // in the batter
  Share pot_strength;  // in the pot of lye, before what goes into the batter
  double water_to_alkali = 0;
  Share water_of_fats;
  Share aim;
  chemistry::EffectiveSuperfat superfat;
  std::vector<Remark> alarms;   // of its superfat: before all other remarks of their severity
  std::vector<Remark> remarks;  // of what is weighed and mixed today
  std::vector<Remark> doubts;   // of what is known of its ingredients
};

/// All that takes part in a batter's saponification as it is weighed, wherever it comes in.
struct Reacting {
  std::vector<chemistry::WeighedFat> fats;
  std::vector<chemistry::WeighedAlkali> alkalis;
  std::vector<chemistry::WeighedAcid> acids;
  std::vector<chemistry::WeighedBlend> blends;
};
Reacting reacting(const chemistry::Formula& formula, const std::vector<Ingredient>& ingredients);

/// Of each of the formula's fats what `ingredients` hold, by itself and in a blend.
std::vector<Mass> fat_masses(const chemistry::Formula& formula,
                             const std::vector<Ingredient>& ingredients);

/// Turns batter to make into weighed ingredients, in the order that keeps it safe: fats rounded up
/// to the scale, additives rounded (down where their document sets a most), alkali computed anew
/// from the rounded masses and rounded down, water from the weighed alkali, nearest, or up where
/// the lye would otherwise be above 50 % strong; then the superfat as it comes out.
///
/// `per_fat` are the formula's proportions. UserError when the alkali rounds to nothing (the run is
/// too small for the scale), the lye as weighed is above 50 % strong, or the effective superfat is
/// below zero. Without alarms and remarks: many are tried to find how large a batch may be.
Weighing trial_weighing_of(const chemistry::Formula& formula, const chemistry::Proportions& per_fat,
                           Mass to_make, const Scales& scales);
/// The same for about as much: a hair may be missing, and its superfat is whatever it comes out at.
Weighing weighed_once(const chemistry::Formula& formula, const chemistry::Proportions& per_fat,
                      Mass to_make, const Scales& scales);

/// So many weighings alike.
struct Weighings {
  std::int64_t count;
  const Weighing& each;
};
/// What they come to together, one at least: masses and ingredients are sums, the superfat is that
/// of the one which may come out lowest. Without alarms and remarks, which are each one's own.
Weighing sum_of(const chemistry::Formula& formula, const std::vector<Weighings>& all);

}  // namespace brimwright::planning
