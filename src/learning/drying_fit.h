#pragma once

#include "chemistry/formula.h"
#include "planning/cure.h"
#include "units/quantity.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <variant>

namespace brimwright::learning {

using chemistry::CureWeighing;

/// Below so many weighings there is a curve, but no interval: with three parameters to find, five
/// leave two to tell the noise by, and the interval is wider than anything it could be used for.
inline constexpr std::size_t fewest_weighings_for_interval = 6;
inline constexpr double level_of_masses = 0.95;

/// Why weighings show no drying curve.
enum class NoCurve : std::uint8_t {
  too_few,        // fewer than three on different days
  never_lighter,  // they do not fall
  straight,       // they fall in a straight line, which does not show where the loss ends
  all_at_once,    // all is lost before the second weighing, which does not show how fast
};

/// The drying curve through weighings, by least squares: the same curve as planning::fitted finds
/// of weighings that a maker gives as the formula's own. A weighing that is heavier than the one
/// before, as scales and damp days make it, only counts as noise. `weighings` are in the order of
/// their days, counted from the pour, with masses above 0.
std::variant<planning::CureCurve, NoCurve> drying_curve(std::span<const CureWeighing> weighings);

/// Where a mass lies by weighings, with how often such an interval holds it. Without an end on a
/// side these weighings do not bound it there: none does below, as long as a straight line is as
/// good as any curve.
struct MassInterval {
  std::optional<Mass> low;
  Mass high;
  double level;
};

/// What a piece weighs on `day`, or in the end: the profile likelihood of that mass,
///
///   { y : S(y) <= S(best) (1 + F / (n - 3)) }
///
/// with S(y) the least sum of squares among the curves that pass through y and F the 95 % quantile
/// of Fisher's F with 1 and n - 3 degrees of freedom (Bates and Watts, Nonlinear Regression
/// Analysis and Its Applications, chapter 6; from memory). Noise is taken as even, independent and
/// of one size. Nothing below six weighings, or where they never get lighter. Of a straight line
/// there is an interval too.
std::optional<MassInterval> mass_on_day(std::span<const CureWeighing> weighings, double day);
std::optional<MassInterval> mass_in_the_end(std::span<const CureWeighing> weighings);

}  // namespace brimwright::learning
