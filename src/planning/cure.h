#pragma once

#include "chemistry/formula.h"
#include "units/quantity.h"
#include "units/share.h"
#include "units/user_error.h"

#include <optional>
#include <string>
#include <vector>

namespace brimwright::planning {

/// Mass of a piece, or of its part, over time: an exponential approach to a final water content,
///
///   m(t) = end + to_lose * exp(-t / tau)    with t from the pour.
///
/// With the water w of the fresh batter, of which the share f stays: end = dry + f w, to_lose =
/// (1 - f) w. It never grows, and nothing but water leaves.
struct CureCurve {
  Mass end, to_lose;
  double tau_days = 0;

  Mass fresh() const { return end + to_lose; }
  Mass on_day(double day) const;
};

/// A curve through the maker's own weighings, by least squares.
struct CureFit {
  CureCurve curve;
  std::size_t weighings = 0;
  /// Standard deviation of the weighings about the curve (n - 3 degrees of freedom); nothing for
  /// three, which any curve meets.
  std::optional<Mass> spread;
};

/// End and loss follow linearly for each time constant, which is searched: a grid in its
/// logarithm, then a golden section. UserError at `where` for fewer than three weighings, for a
/// mass that rises, or for weighings that do not show where they tend: a straight line, or all of
/// the loss before the second.
CureFit fitted(const std::vector<chemistry::CureWeighing>& weighings, const Place& where);

/// How one part of a piece cures, by its formula.
struct PartCure {
  Mass fresh;                      // of this part of one piece
  Mass cured;                      // when it is sold, after the formula's cure
  std::optional<CureCurve> curve;  // of this part of one piece, where the formula has a "drying"
  std::optional<CureFit> fit;      // of the weighed piece, where that drying was weighed
};
/// `fresh` is the part in one piece, of which `water` can dry out. Nothing when the formula says
/// neither "drying" nor "water_lost_in_cure". UserError at the formula when its weighings cannot be
/// fitted, or lose more than the water there is.
std::optional<PartCure> cure_of(const chemistry::Formula& formula, Mass fresh, Mass water);

}  // namespace brimwright::planning
