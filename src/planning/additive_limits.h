#pragma once

#include "chemistry/formula.h"
#include "chemistry/proportions.h"
#include "units/share.h"

#include <cstddef>
#include <optional>
#include <string>

namespace brimwright::planning {

/// What is used of an additive whose supplier's document sets a limit, on the mass that the
/// document names: the fats, the batter or the finished soap. By the formula as it is stated,
/// before any rounding, `per_fat`; spoons by the bulk density, which read_formula requires.
///
/// Nothing without a limit, and for one on the finished soap when the formula says nothing of its
/// cure. UserError as of cure_of.
std::optional<Share> used_of_limited(const chemistry::Formula& formula,
                                     const chemistry::Proportions& per_fat, std::size_t additive);

/// The most that its document allows, on that same mass. Expects a limit.
Share allowed_of_limited(const chemistry::Additive& additive);
/// That mass in words: "fats", "batter", "finished soap". Expects a limit.
std::string limited_mass(const chemistry::Additive& additive);

/// Whether `used` is above `most` by more than a rate typed in may be off as a binary number.
bool is_above(Share used, Share most);

/// A rate that keeps within the limit.
struct AllowedRate {
  std::string text;    // to be typed into the formula: "2.87 % of fats"
  double per_fat = 0;  // grams of the additive for each gram of the formula's fats
};
/// The highest rate of few digits that keeps an additive within its limit, on the basis that its
/// own rate names; nothing where not even 0.000001 % does. Expects a limit that is passed.
std::optional<AllowedRate> allowed_rate(const chemistry::Formula& formula, std::size_t additive);

}  // namespace brimwright::planning
