#pragma once

#include "units/quantity.h"

#include <cstdint>

namespace brimwright {

// Rounding as a named step. A value within 1e-9 (relative, or absolute below one) of a whole number
// counts as that whole number, so that 24 pieces reached through 23.9999999999 stay 24.

std::int64_t whole_up(double value);
std::int64_t whole_down(double value);
std::int64_t whole_nearest(double value);  ///< halves away from zero

/// Multiples of `step`, which must be positive.
Mass rounded_up(Mass mass, Mass step);
Mass rounded_down(Mass mass, Mass step);
Mass rounded_nearest(Mass mass, Mass step);

}  // namespace brimwright
