#pragma once

#include <string>

namespace brimwright {

/// Which way a figure goes that is shown with fewer digits than it has.
enum class Rounded { down, nearest, up };

/// `value` with exactly `decimals` digits (0 to 6) after the point, rounded `towards` minus
/// infinity, to the nearest (halves away from zero) or towards plus infinity. What is within 1e-9
/// of a multiple of the last digit counts as that multiple, as in rounding.h.
std::string rounded_text(double value, int decimals, Rounded towards);

}  // namespace brimwright
