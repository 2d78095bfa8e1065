#pragma once

#include "units/number_text.h"
#include "units/printing.h"

namespace brimwright::reports {

/// `value` as the double nearest to its text with `decimals` digits, so that JSON shows 198.4 and
/// never 198.40000000000001.
inline double to_decimals(double value, int decimals) {
  return number_of(fixed(value, decimals)).value();
}

}  // namespace brimwright::reports
