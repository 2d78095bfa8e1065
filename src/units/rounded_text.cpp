#include "units/rounded_text.h"

#include "units/printing.h"
#include "units/rounding.h"

#include <cmath>

namespace brimwright {

std::string rounded_text(double value, int decimals, Rounded towards) {
  const double digits = std::pow(10.0, decimals);
  const double scaled = value * digits;
  // Beyond that a double has no digits left to round, and a whole number may not hold it.
  if (!(std::abs(scaled) < 1e15)) return fixed(value, decimals);
  const auto steps = towards == Rounded::down ? whole_down(scaled)
                     : towards == Rounded::up ? whole_up(scaled)
                                              : whole_nearest(scaled);
  return fixed(static_cast<double>(steps) / digits, decimals);
}

}  // namespace brimwright
