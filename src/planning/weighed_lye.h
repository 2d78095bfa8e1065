#pragma once

#include "chemistry/formula.h"
#include "planning/lye_mend.h"
#include "planning/run.h"
#include "planning/tally.h"
#include "planning/weighing.h"
#include "units/quantity.h"
#include "units/remark.h"
#include "units/share.h"
#include "units/user_error.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// One batter of a batch: the base, or a whipping of the topping, counted from 1; 0: the only one.
struct WhichBatter {
  bool is_topping = false;
  std::int64_t whipping = 0;
  bool operator==(const WhichBatter&) const = default;
};

// What the maker says of lye that is already made, and where she said it.
struct UsedAlkali {
  WhichBatter batter;
  chemistry::Alkali alkali;
  Mass weighed;
  Place where;
  bool is_solution = false;
};
/// A fat put in beside what the plan weighs, to mend a batter.
struct AddedFat {
  WhichBatter batter;
  std::string fat;  // by its id
  Mass weighed;
  Place where;
};
/// Of the bag that the alkali was weighed from.
struct BoughtPurity {
  chemistry::Alkali alkali;
  Share purity, low, high;
  bool range_assumed = false;
  Place where;
};

struct LyeStory {
  std::optional<std::int64_t> batch;  // not needed where all batches are alike
  Place batch_where;
  std::vector<UsedAlkali> used;
  std::vector<AddedFat> added;
  std::vector<BoughtPurity> purities;
};

/// Sets the purities of `formula`, of which nothing is weighed yet, to those of the bags bought,
/// and settles anew what its liquids replace. UserError where they then leave no lye that
/// dissolves.
void plan_with(chemistry::Formula& formula, const std::vector<BoughtPurity>& purities);

/// The same where all but the alkali is weighed already and stays as it is.
void buy(chemistry::Formula& formula, const std::vector<BoughtPurity>& purities);

/// A batter whose lye is made: as it stands, and how it is mended.
struct MadeLye {
  std::int64_t batch = 1;
  std::string batter = {};     // "Base", "Topping", "Topping, whipping 2"
  chemistry::Formula formula;  // with the purity bought
  Weighing as_planned, as_it_is;
  Mends mends = {};
  Remark said = {};  // of it, in a sentence; a danger where it may be lye-heavy
};

/// Puts what was weighed in place of what was planned: `plan` then shows that batch by itself with
/// its own weights, sums and superfat, a danger before all others where it may be lye-heavy.
///
/// Fats stay as planned, plus those said to be added. A mend's fats are the formula's own in its
/// shares, each rounded up to its scale's step; missing alkali is rounded down to its own.
/// UserError where the story does not fit the plan: no such batch, alkali or fat, a shared pot.
std::vector<MadeLye> tell_made_lye(Plan& plan, const Run& run, const LyeStory& story);

}  // namespace brimwright::planning
