#pragma once

#include "chemistry/formula.h"
#include "planning/run.h"
#include "planning/weighing.h"
#include "units/quantity.h"

#include <optional>
#include <vector>

namespace brimwright::planning {

/// What is to be put in, on the maker's scales, and what then comes out.
struct Mend {
  std::vector<Ingredient> to_add;  // `weighed` is what is added
  Weighing after;
};

/// How a batter whose lye is made is mended.
struct Mends {
  std::optional<Mend> to_aim = {};   // fats that bring it back to the aim, where it is below
  std::optional<Mend> to_zero = {};  // the least that keep 19 batches in 20 above zero, where not
  std::optional<Mend> missing = {};  // alkali that may still go in, where it is above the aim
  std::optional<Mass> water = {};    // for that alkali, at the lye's strength
  bool is_beyond_mending = false;    // more fats than there are would be needed
};

/// `weighing` with `more` of each of its ingredients, in their order: what is added, and the sums,
/// lye and superfat of what then stands in it. Plain water is as it was.
Mend with_more(const Weighing& weighing, const chemistry::Formula& formula,
               const std::vector<Mass>& more);

/// Those of a batter that weighs `now`; `strength`: of its lye as it was planned.
Mends mends_of(const Weighing& now, const chemistry::Formula& formula, Share strength,
               const Scales& scales);

}  // namespace brimwright::planning
