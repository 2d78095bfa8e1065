#pragma once

#include "units/quantity.h"
#include "units/share.h"
#include "units/temperature.h"

#include <cstdint>
#include <string>

namespace brimwright {

// Writing numbers for people and files: always std::to_chars, never the locale; the same value
// gives the same bytes.

/// `value` with exactly `decimals` digits after the point; a negative zero loses its sign.
std::string fixed(double value, int decimals);
/// `value` with at most `decimals` digits after the point and no trailing zeros: "2.5", "3".
std::string trimmed(double value, int decimals);
/// The shortest text that reads back as the same double.
std::string exact(double value);

/// "2 1/4 in" to the nearest sixteenth; "less than 1/16 in" below half of one.
std::string in_inches(Length length);
/// "49 °C (120 °F)", to the degree; "120 °F (49 °C)" where it was given so.
std::string in_both_scales(Temperature t);
/// Decimals that show a multiple of `step` whole: 0 for 1 g or 5 g, 1 for 0.1 g, 2 for 0.05 g. At
/// most 6.
int decimals_for(Mass step);

}  // namespace brimwright
