#pragma once

#include "units/quantity.h"

#include <string>

namespace brimwright {

// Bounds as text. Typed back, what was given as the most is no more than it was, and what was given
// as the least is no less, to the last digit.

/// `value` with at most `decimals` digits after the point, not above it, without trailing zeros.
std::string at_most(double value, int decimals);
/// The same, not below it.
std::string at_least(double value, int decimals);

/// "30.25 mm (1.19 in)": each figure alone is no more than `length`.
std::string at_most_text(Length length);
/// Each figure alone is no less than `length`.
std::string at_least_text(Length length);

}  // namespace brimwright
