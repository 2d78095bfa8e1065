#pragma once

#include "units/quantity.h"
#include "units/share.h"

#include <string>

namespace brimwright {

// Figures that a maker is told to use. Typed back as printed, in either unit, they hold: the most
// that will do is rounded down and the least up, to 0.1 mm and 0.01 in, 0.1 ml, 0.1 g and 0.01 oz,
// 0.1 %; finer where the figure would come to nothing. A figure that is whole but for rounding (a
// billionth of it) counts as whole; a bound that is kept to the last digit is for bounded_text.h.

std::string most_text(Length length);  ///< "24.1 mm (0.94 in)"
std::string least_text(Length length);
std::string most_text(Volume volume);  ///< "28.1 ml"
std::string least_text(Volume volume);
std::string most_text(Mass mass);  ///< "12.3 g (0.43 oz)"
std::string least_text(Mass mass);
std::string most_text(Share share, int decimals = 1);  ///< "33.3 %"

/// `length` down to what its text in millimetres, and in inches, says.
Length most_in_millimetres(Length length, int decimals = 1);
Length most_in_inches(Length length, int decimals = 2);

}  // namespace brimwright
